import { useSends } from './sends.js';

/** How the office decides on a proposal: the change to send, and the word under which it is shown on its way. */
export type Decide = (change: 'acceptProposal' | 'dropProposal' | 'undoProposal', word: string) => void;

/** Decides on a proposal as it was read. */
export function useDecide(): (proposal: {
  readonly id: string;
  readonly revision: number;
  readonly number: number;
}) => Decide {
  const { send } = useSends();
  return ({ id, revision, number }) =>
    (change, word) =>
      void send(change, `${word} proposal ${number}`, { proposalId: id, revision });
}
