/** What other features may use of the board. */
export { Board } from './board.model.js';
