import { defineCollection } from 'astro:content';
import { z } from 'astro/zod';
import { cabinetLoader } from './catalogue/collection-loader.ts';
import type { Filed, FiledPiece } from './catalogue/records.ts';
import type { CabinetFields } from './catalogue/schema/cabinet.ts';
import type { ExhibitFields } from './catalogue/schema/exhibit.ts';
import type { EraFields, SetFields } from './catalogue/schema/goals.ts';
import type { DenominationFields, MintFields, RulerFields, WorkFields } from './catalogue/schema/lists.ts';
import { PRIVACY } from './privacy/privacy.ts';

// The loader has read every file against its form in src/catalogue/schema already; here stand the types.
export const collections = {
  cabinet: defineCollection({ loader: cabinetLoader('cabinet', PRIVACY), schema: z.custom<Filed<CabinetFields>>() }),
  pieces: defineCollection({ loader: cabinetLoader('pieces', PRIVACY), schema: z.custom<FiledPiece>() }),
  rulers: defineCollection({ loader: cabinetLoader('rulers', PRIVACY), schema: z.custom<Filed<RulerFields>>() }),
  mints: defineCollection({ loader: cabinetLoader('mints', PRIVACY), schema: z.custom<Filed<MintFields>>() }),
  denominations: defineCollection({
    loader: cabinetLoader('denominations', PRIVACY),
    schema: z.custom<Filed<DenominationFields>>(),
  }),
  eras: defineCollection({ loader: cabinetLoader('eras', PRIVACY), schema: z.custom<Filed<EraFields>>() }),
  sets: defineCollection({ loader: cabinetLoader('sets', PRIVACY), schema: z.custom<Filed<SetFields>>() }),
  exhibits: defineCollection({ loader: cabinetLoader('exhibits', PRIVACY), schema: z.custom<Filed<ExhibitFields>>() }),
  works: defineCollection({ loader: cabinetLoader('works', PRIVACY), schema: z.custom<Filed<WorkFields>>() }),
};
