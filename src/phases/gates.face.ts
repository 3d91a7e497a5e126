/* The gates of phases for features above this one: what stands in the way, and what moves by itself. */
export { DesignBroken } from './errors/design-broken.js';
export { gatherFacts } from './facts/gather-facts.js';
export { demandNoObstacle, JOB_CHECKS } from './obstacles/obstacles.js';
export { settleWaits } from './waits/settle-waits.js';
