/** Refuses a Node that is too old. @throws Error saying which one is needed */
export function demandNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    throw new Error(
      `Flagway needs Node 20.19 or newer; this is ${process.versions.node}. Install a newer one and try again.`,
    );
  }
}
