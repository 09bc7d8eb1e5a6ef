/**
 * Judges a layout. The first waist of the house: what is made of a wall is made of the verdict, and
 * only this package can give one.
 */
package plycrag.check;
