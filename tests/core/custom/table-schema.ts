import {
  BURNER_TYPES,
  CONDITIONS,
  FIXTURE_KINDS,
  MATERIALS,
  METHODS,
  OVEN_CLEANINGS,
  PURPOSES,
} from '../../../src/core/kitchen/index.ts';

const listOf = (ids: readonly string[]) => ({
  type: 'array',
  minItems: 1,
  items: { enum: ids },
});
const ID = { type: 'string', pattern: '^[a-z0-9-]+$' };
const MINUTES = { type: 'number', minimum: 1, maximum: 600 };
const COVERS = [
  'rack-in-bowls',
  'basin-on-rack',
  'adhesive-paper',
  'shelf-paper',
  'liner-with-holes',
  'insert',
  'plastic-sheet',
  'heat-proof-liner',
];

const ANSWER = {
  type: 'object',
  additionalProperties: false,
  required: ['method', 'cover'],
  properties: {
    method: { enum: METHODS },
    cover: { type: 'boolean' },
    minutes: MINUTES,
    times: { type: 'integer', minimum: 1, maximum: 5 },
    stone: { const: true },
  },
};

/** A question for the rabbi names the answers that are given; the others are answered by looking. */
const QUESTION = {
  type: 'object',
  additionalProperties: false,
  required: ['about'],
  properties: {
    about: { enum: ['ruling', 'material', 'condition', 'use'] },
    answers: { type: 'array', minItems: 2, items: ANSWER },
  },
  // A question for the rabbi names the answers that are given.
  anyOf: [{ properties: { about: { not: { const: 'ruling' } } } }, { required: ['answers'] }],
};

const SHARED_FIELDS = {
  id: ID,
  text: { type: 'string', pattern: '^[a-z0-9-]+\\.(sephardic|ashkenazic)$' },
  kinds: listOf(FIXTURE_KINDS),
  materials: listOf(MATERIALS),
  conditions: listOf(CONDITIONS),
  cover: { type: 'boolean' },
  coverWith: { enum: COVERS },
  source: { type: 'string' },
  alsoSources: { type: 'array', minItems: 1, items: { type: 'string' } },
  checked: { type: 'boolean' },
  question: QUESTION,
};

const ROW = {
  type: 'object',
  additionalProperties: false,
  required: ['id', 'kinds', 'method', 'cover', 'source', 'checked'],
  properties: {
    ...SHARED_FIELDS,
    purposes: listOf(PURPOSES),
    burners: listOf(BURNER_TYPES),
    cleaning: listOf(OVEN_CLEANINGS),
    method: { enum: METHODS },
    minutes: MINUTES,
    term: ID,
    note: { const: true },
  },
};

const RULE = {
  type: 'object',
  additionalProperties: false,
  required: ['id', 'kinds', 'methods', 'conditions', 'cover', 'source', 'checked'],
  properties: { ...SHARED_FIELDS, methods: listOf(METHODS), method: { enum: METHODS } },
};

const FACT_RULE = {
  type: 'object',
  additionalProperties: false,
  required: ['id', 'kinds', 'methods', 'fact', 'told', 'cover', 'source', 'checked'],
  properties: {
    ...SHARED_FIELDS,
    purposes: listOf(PURPOSES),
    methods: listOf(METHODS),
    fact: { enum: ['varnished', 'kneaded', 'hotFood'] },
    told: listOf(['yes', 'no', 'unknown']),
    method: { enum: METHODS },
  },
};

/** The shape of a custom's table, for ajv (JSON Schema 2020-12 as far as it is used here). */
export const TABLE_SCHEMA = {
  type: 'object',
  additionalProperties: false,
  required: [
    'id',
    'restHours',
    'restSource',
    'coldSource',
    'kettleSource',
    'rows',
    'conditionRules',
    'factRules',
  ],
  properties: {
    $comment: { type: 'string' },
    id: { enum: ['sephardic', 'ashkenazic'] },
    restHours: { type: 'number', minimum: 1, maximum: 168 },
    restSource: { type: 'string' },
    coldSource: { type: 'string' },
    kettleSource: { type: 'string' },
    rows: { type: 'array', minItems: 1, items: ROW },
    conditionRules: { type: 'array', minItems: 1, items: RULE },
    factRules: { type: 'array', minItems: 1, items: FACT_RULE },
  },
};
