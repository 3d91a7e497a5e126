import { fieldsOf } from './fields-of.js';

/**
 * What the hookup sheet needs: the one job's sheet, and the two changes of an electrician. None of these fields leads to
 * another job, to the crews, the plan or the people.
 */
export const HOOKUP_REACH = fieldsOf({
  Query: 'hookupSheet',
  Mutation: 'bookHookup recordHookup',
  HookupSheet: 'head hookups photos',
  LinkPhoto: 'id caption takenAt path smallPath width height',
  SheetHead:
    'recipient companyName askName askEmail jobNumber jobName jobState address town zone expiresAt now',
  Hookup:
    'id state coldLeadThrough coldLeadFreeInches sensorThrough leadsLabelled readyAt bookedFor bookedBy doneAt doneBy energiseAllowedAt energisedAt leadsPass cautions revision needs energisingNeeds circuit heatingSet',
  Need: 'id met text',
  Circuit: 'watts volts amperes breakerAmperes text source',
  HeatingSet:
    'id name watts volts ohms labelTempF heatedFeet coldLeadFeet cureDays receivedAt areas readings cautions',
  Area: 'id name',
  CableReading: 'id stage at ohms megaohms testVolts cableTempF accepted area findings warnings forbids',
  Finding: 'rule ok measured limit mark source caution text',
  HookupChanged: 'hookup',
  Refusal: 'code message',
  InvalidInput: 'code message faults',
  InputFault: 'path message',
  NeedsMissing: 'code message needs',
  LimitExceeded: 'code message findings',
  DesignBroken: 'code message findings',
});
