/**
 * A table of keys, each written out.
 * @template {Record<string, string>} Table
 * @param {Table} table
 */
export function keys(table) {
  return table;
}
