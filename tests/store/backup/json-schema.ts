interface ValibotSchema {
  readonly type: string;
  readonly entries?: Readonly<Record<string, ValibotSchema>>;
  readonly wrapped?: ValibotSchema;
  readonly item?: ValibotSchema;
  readonly items?: readonly ValibotSchema[];
  readonly value?: ValibotSchema;
  readonly options?: readonly unknown[];
  readonly pipe?: readonly { readonly kind: string; readonly type: string; readonly requirement?: unknown }[];
}

const restrictions: Readonly<Record<string, (requirement: unknown) => object>> = {
  min_length: (minLength) => ({ minLength }),
  max_length: (maxLength) => ({ maxLength }),
  min_value: (minimum) => ({ minimum }),
  max_value: (maximum) => ({ maximum }),
  integer: () => ({ type: 'integer' }),
  safe_integer: () => ({ type: 'integer', maximum: Number.MAX_SAFE_INTEGER }),
  // JSON has no others.
  finite: () => ({}),
};

/** The JSON Schema that says the same as a Valibot schema, for the kinds of schema that records are made of. */
export function jsonSchema(schema: unknown): object {
  const given = schema as ValibotSchema;
  const said = given.pipe?.filter(({ kind }) => kind === 'validation') ?? [];
  const limits = said.map(({ type, requirement }) => {
    const limit = restrictions[type];
    if (!limit) throw new Error(`No JSON Schema for ${type}.`);
    const found = limit(requirement);
    return given.type === 'array' && 'maxLength' in found ? { maxItems: found.maxLength } : found;
  });
  return Object.assign(plain(given), ...limits);
}

function plain(schema: ValibotSchema): object {
  switch (schema.type) {
    case 'string':
    case 'number':
    case 'boolean':
      return { type: schema.type };
    case 'any':
      return {};
    case 'picklist':
      return { enum: schema.options };
    case 'array':
      return { type: 'array', items: jsonSchema(schema.item) };
    case 'tuple':
      return {
        type: 'array',
        prefixItems: schema.items?.map(jsonSchema),
        minItems: schema.items?.length,
      };
    case 'record':
      return { type: 'object', additionalProperties: jsonSchema(schema.value) };
    case 'union':
      return { anyOf: schema.options?.map(jsonSchema) };
    case 'loose_object': {
      const entries = Object.entries(schema.entries ?? {});
      return {
        type: 'object',
        properties: Object.fromEntries(
          entries.map(([name, inner]) => [name, jsonSchema(inner.type === 'optional' ? inner.wrapped : inner)]),
        ),
        required: entries.filter(([, { type }]) => type !== 'optional').map(([name]) => name),
      };
    }
    default:
      throw new Error(`No JSON Schema for ${schema.type}.`);
  }
}
