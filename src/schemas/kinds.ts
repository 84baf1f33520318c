/** The kinds of record, each with its shape. Build, tests and pages all read a record by the shape that stands here. */
import type { z } from 'astro/zod';
import { checkSchema } from './checks';
import { correctionSchema } from './corrections';
import { glossarySchema } from './glossary';
import type { Kind } from './ids';
import { lessonSchema } from './lessons';
import { plateSchema } from './photos';
import {
  adhesiveSchema,
  cautionSchema,
  ingredientSchema,
  paperSchema,
  sourceSchema,
  substrateSchema,
  techniqueSchema,
} from './records';
import { trialSchema } from './trials';

export const SHAPES = {
  papers: paperSchema,
  substrates: substrateSchema,
  ingredients: ingredientSchema,
  adhesives: adhesiveSchema,
  techniques: techniqueSchema,
  cautions: cautionSchema,
  sources: sourceSchema,
  checks: checkSchema,
  corrections: correctionSchema,
  glossary: glossarySchema,
  trials: trialSchema,
  lessons: lessonSchema,
  plates: plateSchema,
} satisfies Readonly<Record<Kind, z.ZodTypeAny>>;

/** A record of one kind, parsed: defaults filled in. */
export type Parsed<K extends Kind> = z.output<(typeof SHAPES)[K]>;

/** Everything in content/, parsed, by kind and id. */
export type Content = { readonly [K in Kind]: ReadonlyMap<string, Parsed<K>> };
