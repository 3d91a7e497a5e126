import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Job as JobRow } from '../generated/prisma/client.js';
import { Finding } from '../inspections/inspections.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Site, SiteReader } from '../sites/sites.face.js';
import { Area } from './area.model.js';
import { BuyLine } from './buy-line.model.js';
import { Clearance } from './clearances/clearance.model.js';
import { Job } from './job.model.js';
import { jobBuyList } from './job-buy-list.js';
import { jobFindings } from './job-findings.js';
import { JobReader } from './job-reader.js';
import { Link } from './link.model.js';
import { Phase } from './phase.model.js';
import { PhaseReader } from './phase-reader.js';
import { Quantity } from './quantity.model.js';
import { shownQuantities } from './quantity-labels.js';
import { Template } from './templates/template.model.js';
import { TemplateReader } from './templates/template-reader.js';

@Resolver(() => Job)
export class JobFieldsResolver {
  constructor(
    private readonly reader: JobReader,
    private readonly phaseReader: PhaseReader,
    private readonly siteReader: SiteReader,
    private readonly templateReader: TemplateReader,
  ) {}

  @ResolveField(() => Site, { description: 'Where it is done.' })
  site(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.siteReader.byId(ctx, job.siteId);
  }

  @ResolveField(() => Template, { description: 'Template it was made from, as it stands now.' })
  template(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.templateReader.byId(ctx, job.templateId);
  }

  @ResolveField(() => [Area], { description: 'Its surfaces, from the door outwards.' })
  areas(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.reader.areas(ctx, job.id);
  }

  @ResolveField(() => [Phase], { description: 'Its phases in order, dropped ones too.' })
  phases(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.phaseReader.ofJob(ctx, job.id);
  }

  @ResolveField(() => [Link], { description: 'The dependencies between its phases.' })
  links(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.phaseReader.linksOfJob(ctx, job.id);
  }

  @ResolveField(() => [Clearance], { description: 'Leave from outside that it needs.' })
  clearances(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.reader.clearances(ctx, job.id);
  }

  @ResolveField(() => [Quantity], { description: 'Amounts that follow from the measurements.' })
  quantities(@Parent() job: JobRow) {
    return shownQuantities(job.quantities);
  }

  @ResolveField(() => [BuyLine], { description: 'What to buy, with waste, rounded up to what is sold.' })
  buyList(@Parent() job: JobRow) {
    return jobBuyList(job.measurement);
  }

  @ResolveField(() => String, { description: 'The measurements of the site visit as entered, as JSON text.' })
  measurement(@Parent() job: JobRow) {
    return JSON.stringify(job.measurement);
  }

  @ResolveField(() => [Finding], { description: 'What the rules say about the design as measured.' })
  findings(@Parent() job: JobRow) {
    return jobFindings(job);
  }
}
