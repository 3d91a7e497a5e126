import { Injectable, type OnApplicationBootstrap } from '@nestjs/common';
import { NOTICE_KINDS, type NoticeKind } from './notice-kind.js';

/** The handlers of all kinds of notices. Features register theirs; the boot refuses a kind without exactly one. */
@Injectable()
export class NoticeKinds implements OnApplicationBootstrap {
  private readonly registered: NoticeKind[] = [];

  register(...handlers: readonly NoticeKind[]): void {
    this.registered.push(...handlers);
  }

  onApplicationBootstrap(): void {
    this.demandComplete();
  }

  /** @throws Error naming every kind without exactly one handler, and every handler of an unknown kind. */
  demandComplete(): void {
    const known: readonly string[] = NOTICE_KINDS;
    const names = this.registered.map(({ kind }) => kind as string);
    const faults = [
      ...known
        .map((kind) => [kind, names.filter((name) => name === kind).length] as const)
        .filter(([, count]) => count !== 1)
        .map(([kind, count]) => `the notice kind "${kind}" has ${count} handlers instead of one`),
      ...names.filter((name) => !known.includes(name)).map((name) => `"${name}" is no kind of notice`),
    ];
    if (faults.length > 0) throw new Error(`Notices cannot be sent: ${faults.join('; ')}`);
  }

  /** @throws Error when there is no such kind. */
  of(kind: string): NoticeKind {
    const handler = this.registered.find((one) => one.kind === kind);
    if (!handler) throw new Error(`No handler for notices of the kind "${kind}"`);
    return handler;
  }
}
