import type { Joint } from './joint.ts';
import type { Choice, ParameterRange } from './parameter.ts';
import { choicesOfKind, parametersFor, spatterBounds } from './ranges.ts';

type Schema = Readonly<Record<string, unknown>>;

function schemaOfKind(kind: Joint['kind']): Schema {
  const properties: Record<string, Schema> = {};
  for (const choice of choicesOfKind(kind)) properties[choice.field] = schemaOfChoice(choice);
  for (const range of parametersFor(kind)) properties[range.field] = schemaOfRange(range);
  properties['spatter'] = spatterSchema;
  return {
    type: 'object',
    properties,
    required: Object.keys(properties),
    additionalProperties: false,
  };
}

function schemaOfChoice({ values }: Choice): Schema {
  return values.length === 1 ? { const: values[0] } : { enum: values };
}

function schemaOfRange({ min, max }: Pick<ParameterRange, 'min' | 'max'>): Schema {
  return { type: 'number', minimum: min, maximum: max };
}

const spatterSchema: Schema = {
  type: 'array',
  maxItems: spatterBounds.most,
  items: {
    type: 'object',
    properties: {
      plate: { enum: [1, 2] },
      place: schemaOfRange(spatterBounds.place),
      height: schemaOfRange(spatterBounds.height),
    },
    required: ['plate', 'place', 'height'],
    additionalProperties: false,
  },
};

/** JSON Schema (draft 2020-12) of a joint, generated from the parameter tables. */
export const jointSchema: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: 'Joint',
  description: 'A butt or fillet joint in plain data: lengths in mm, angles in degrees.',
  oneOf: [schemaOfKind('fillet'), schemaOfKind('butt')],
};
