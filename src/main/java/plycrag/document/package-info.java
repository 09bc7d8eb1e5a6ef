/**
 * What the product makes, free of any file format: drawings, programs, tables, maps, the book.
 *
 * <p>The second waist of the house. Makers of content fill these values and know no grammar; the
 * writers in {@code files} know a grammar and nothing of walls. All values are immutable. Lengths
 * are millimetres.
 */
package plycrag.document;
