import { fieldsOf } from './fields-of.js';

/** What the owner's page needs: the week of the one job in plain words. Nothing can be changed by it. */
export const OWNER_WEEK_REACH = fieldsOf({
  Query: 'ownerWeek',
  OwnerWeek: 'head summary days walk heat heatCaution photos',
  SheetHead: 'recipient companyName askName askEmail jobName jobState address town zone expiresAt now',
  LinkPhoto: 'id caption takenAt path smallPath width height',
  OwnerDay: 'date lines keepClear weather',
});
