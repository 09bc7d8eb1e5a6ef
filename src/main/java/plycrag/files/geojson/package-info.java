/**
 * Feature maps as GeoJSON (RFC 7946), for other programs.
 *
 * <p>Needs: a {@link plycrag.document.FeatureMap}.
 *
 * <p>Guarantees: one FeatureCollection with one feature a line; shells run counter-clockwise, holes
 * clockwise; numbers as {@link plycrag.units.Decimal} prints them, at most four decimals;
 * properties in their order; no coordinate reference system. Coordinates are the geometry's own, in
 * millimetres, where RFC 7946 expects degrees: readers that place them on the globe are wrong to.
 *
 * <p>Geometries are written by JTS; its numbers are printed again, since JTS prints small and large
 * ones with an exponent ({@code 4.0E-4}).
 *
 * <p>Leaves out: a third coordinate.
 */
package plycrag.files.geojson;
