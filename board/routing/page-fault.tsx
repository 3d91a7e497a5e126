import { Component, type ReactNode } from 'react';

interface PageFaultProps {
  readonly children: ReactNode;
}

/** Says that a page could not be drawn, and what to do, instead of leaving it blank. */
export class PageFault extends Component<PageFaultProps, { readonly fault: Error | null }> {
  override state = { fault: null };

  static getDerivedStateFromError(fault: Error) {
    return { fault };
  }

  override render(): ReactNode {
    const { fault } = this.state as { fault: Error | null };
    if (!fault) return this.props.children;
    return (
      <main className="page-note">
        <h1>This page could not be drawn</h1>
        <p>
          Load it again. Changes without an answer are kept on this device. If it stays, tell us:{' '}
          {fault.message}
        </p>
        <button type="button" className="act act-strong" onClick={() => location.reload()}>
          Load again
        </button>
      </main>
    );
  }
}
