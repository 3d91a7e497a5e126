/** A promised phase that a proposal moves. */
export interface MovedPromise {
  readonly phase: { readonly name: string; readonly job: { readonly number: number } } | null;
  readonly crewBefore: { readonly id: string; readonly name: string } | null;
  readonly crewAfter: { readonly id: string; readonly name: string } | null;
}

/** A crew with the promises to it that move, come or go. */
export interface ToTell {
  readonly crew: string;
  readonly phases: readonly string[];
}

/** Who was told other dates and must be told anew when a proposal is accepted: every crew before and after, by name. */
export function whoToTell(moved: readonly MovedPromise[]): ToTell[] {
  const told = new Map<string, { crew: string; phases: string[] }>();
  for (const { phase, crewBefore, crewAfter } of moved) {
    const name = phase ? `${phase.job.number} ${phase.name}` : 'a phase that is gone';
    const crews = new Map([crewBefore, crewAfter].flatMap((crew) => (crew ? [[crew.id, crew.name]] : [])));
    for (const [id, crew] of crews) {
      const one = told.get(id) ?? { crew, phases: [] };
      one.phases.push(name);
      told.set(id, one);
    }
  }
  return [...told.values()].sort((a, b) => (a.crew < b.crew ? -1 : a.crew > b.crew ? 1 : 0));
}
