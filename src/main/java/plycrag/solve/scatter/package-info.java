/**
 * Centres scattered over an area as blue noise: at random, but none near to another.
 *
 * <p>Needs: polygons with or without holes, in mm, as the places that a centre may have; a
 * distance, the same everywhere or changing linearly up the area.
 *
 * <p>Guarantees: every centre lies in the area or on its boundary and on the marking grid, or is
 * the image of one that does. No two centres are nearer than the greater of their own distances,
 * measured where they come to lie. The scatter is maximal: on no other place of the marking grid,
 * in the area, would another find room; with a mirror, no other pair of images, and no other place
 * on the mirror itself. Same seed, same centres.
 *
 * <ol>
 *   <li>The area is quartered into square cells smaller than the distance; cells outside are left
 *       out at any size, which the boundary's pieces that cross a cell decide ({@link
 *       plycrag.solve.scatter.Region}).
 *   <li>Darts are thrown at random places of random cells. One that falls inside and near no other
 *       becomes a centre ({@link plycrag.solve.scatter.Centres} answers that from buckets).
 *   <li>Cells that one centre covers as a whole are left out, the others quartered, and darts
 *       thrown again, until the cells are single places of the marking grid. Each of those left is
 *       tried, in random order.
 * </ol>
 *
 * <p>This is maximal Poisson-disc sampling after Ebeida and others (A Simple Algorithm for Maximal
 * Poisson-Disk Sampling in High Dimensions, 2012), on a grid, where it ends exactly. Cost: nearly
 * linear in the number of centres and the length of the boundary in steps; with a fade also the
 * square of the greatest distance over the least.
 *
 * <p>Leaves out: holes about members or edges, which whoever asks cuts out of the area; the
 * tolerance of that area's own rounding to 1 µm.
 */
package plycrag.solve.scatter;
