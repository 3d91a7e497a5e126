import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import type { ForecastFault, ForecastRead } from '../../shared/weather/forecast-fault.js';
import type { Forecast } from '../../shared/weather/forecast.js';
import { readForecastCsv } from '../../shared/weather/read-forecast-csv.js';
import { readForecastJson } from '../../shared/weather/read-forecast-json.js';
import type { Change } from '../platform/change/change.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound } from '../platform/outcomes/demand.js';
import { refuseInput } from '../platform/outcomes/demand-past.js';
import { InvalidInput } from '../platform/outcomes/invalid-input.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { Refused } from '../platform/outcomes/refusal.js';
import { ForecastFormat, type UploadForecastInput } from './weather.inputs.js';
import { isFromFuture } from './from-future.js';
import { keepForecast } from './keep-forecast.js';

const named = z.object({
  source: z
    .string()
    .trim()
    .min(1, { error: 'must say where the forecast comes from' })
    .max(200, { error: 'has at most 200 letters' }),
});

/** Takes hourly forecasts of sites. */
@Injectable()
export class ForecastsService {
  constructor(private readonly changes: ChangeRunner) {}

  /**
   * Keeps a forecast; holds and plan follow. Faults of the file are listed line by line, and nothing of a faulty file
   * is used.
   */
  upload(ctx: Context, input: UploadForecastInput) {
    return this.changes.run(ctx, { operation: 'uploadForecast', input }, async (change) => {
      const { source } = parseInput(named, input);
      const site = demandFound(
        await change.tx.site.findFirst({ where: companyRow(change, input.siteId) }),
        'site',
      );
      const read = readFile(input);
      if (!read.ok) throw new Refused(new InvalidInput(read.faults.map(faultOfLine)));
      const { forecast, notes } = read;
      await demandNewer(change, site.id, forecast);
      await keepForecast(change, site.id, source, read);
      return { siteId: site.id, hours: forecast.hours.length, notes: notes.map((note) => ({ ...note })) };
    });
  }
}

function readFile({ format, text }: UploadForecastInput): ForecastRead<Forecast> {
  return format === ForecastFormat.json ? readForecastJson(text) : readForecastCsv(text);
}

function faultOfLine({ line, message }: ForecastFault) {
  return { path: line === 0 ? 'text' : `text.${line}`, message };
}

/** Forecasts are used by their time of issue, so one that is older than the one in use would be kept for nothing. */
async function demandNewer({ ctx, tx, now }: Change, siteId: string, { issuedAt }: Forecast): Promise<void> {
  if (isFromFuture(issuedAt, now))
    refuseInput(
      'text',
      `issued_at ${new Date(issuedAt).toISOString()} lies in the future; check its date and offset.`,
    );
  const newer = await tx.forecast.findFirst({
    where: { companyId: ctx.companyId, siteId, setAsideAt: null, issuedAt: { gt: new Date(issuedAt) } },
    orderBy: { issuedAt: 'desc' },
  });
  if (newer)
    refuseInput(
      'text',
      `A forecast issued later, ${newer.issuedAt.toISOString()}, is in use already; send a newer one.`,
    );
}
