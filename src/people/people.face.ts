/** What other features may use of people. */
export { PeopleService } from './people.service.js';
export { Person } from './person.model.js';
