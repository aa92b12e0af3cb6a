import { toJsonSchema } from '@valibot/to-json-schema'
import { orderSchema } from '../../src/order/schema.js'

/**
 * The order's keys as JSON Schema (draft 7), as an editor reads it: what may be typed, before lengths and angles are
 * read. Ranges and the rules that join several keys are not in it; the reader tells those.
 */
const orderJsonSchema = () => ({
  $schema: 'http://json-schema.org/draft-07/schema#',
  title: 'Order of stars',
  ...toJsonSchema(orderSchema('mm'), {
    target: 'draft-07',
    typeMode: 'input',
    errorMode: 'throw',
    // The marks of `fields.ts` are for our own walks; an editor does not know them.
    ignoreActions: ['metadata'],
  }),
})

/** As kept in `shared/order.schema.json`. */
export const orderJsonSchemaText = (): string => `${JSON.stringify(orderJsonSchema(), null, 2)}\n`
