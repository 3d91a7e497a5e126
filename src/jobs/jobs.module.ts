import { Global, Module } from '@nestjs/common';
import { ClearanceChangedResolver } from './clearances/clearance-changed.resolver.js';
import { ClearancesResolver } from './clearances/clearances.resolver.js';
import { ClearancesService } from './clearances/clearances.service.js';
import { AddPhaseService } from './custom/add-phase.service.js';
import { CustomResolver } from './custom/custom.resolver.js';
import { DropPhaseService } from './custom/drop-phase.service.js';
import { LinkCycleResolver } from './custom/link-cycle.resolver.js';
import { LinksService } from './custom/links.service.js';
import { CreateJobService } from './entering/create-job.service.js';
import { DesignChangesService } from './entering/design-changes.service.js';
import { JobsService } from './entering/jobs.service.js';
import { FindingFieldsResolver } from './finding-fields.resolver.js';
import { JobChangedResolver } from './job-changed.resolver.js';
import { JobFieldsResolver } from './job-fields.resolver.js';
import { JobReader } from './job-reader.js';
import { JobsResolver } from './jobs.resolver.js';
import { LinkFieldsResolver } from './link-fields.resolver.js';
import { PhaseFieldsResolver } from './phase-fields.resolver.js';
import { PhaseReader } from './phase-reader.js';
import { TemplateReader } from './templates/template-reader.js';
import { TemplateSavedResolver } from './templates/template-saved.resolver.js';
import { TemplatesResolver } from './templates/templates.resolver.js';
import { TemplatesService } from './templates/templates.service.js';

const templates = [TemplateReader, TemplatesService, TemplatesResolver, TemplateSavedResolver];
const entering = [CreateJobService, DesignChangesService, JobsService, JobsResolver, JobChangedResolver];
const custom = [AddPhaseService, DropPhaseService, LinksService, CustomResolver, LinkCycleResolver];
const clearances = [ClearancesService, ClearancesResolver, ClearanceChangedResolver];
const fields = [JobFieldsResolver, PhaseFieldsResolver, LinkFieldsResolver, FindingFieldsResolver];

/** Jobs with everything that makes them up. */
@Global()
@Module({
  providers: [JobReader, PhaseReader, ...templates, ...entering, ...custom, ...clearances, ...fields],
  exports: [JobReader, PhaseReader],
})
export class JobsModule {}
