/**
 * Linear algebra of sparse symmetric matrices, by EJML: what {@code solve.frame} needs of it, and
 * nothing of frames. What resists is called stiffness here as there, unknowns freedoms, and a
 * solution a motion.
 *
 * <p>Needs the numbers of the unknowns that meet each other ({@link plycrag.solve.sparse.Seating})
 * and matrices of elements, added at places that are found once ({@link
 * plycrag.solve.sparse.SparsePattern}).
 *
 * <ol>
 *   <li>An order of elimination that fills little, by least degree.
 *   <li>Cholesky's factor ({@link plycrag.solve.sparse.Factor}). Where a pivot vanishes, the
 *       motions that meet no resistance are read from it ({@link
 *       plycrag.solve.sparse.FreeMotions}).
 *   <li>Eigenvalues of small matrices by C. Jacobi ({@link plycrag.solve.sparse.SymmetricEigen}),
 *       the greatest of large ones by C. Lanczos ({@link plycrag.solve.sparse.Lanczos}).
 * </ol>
 *
 * <p>Guarantees the same bits everywhere: sums, products, quotients and square roots alone, in a
 * fixed order and on one thread. What counts as nothing is told as parts of what it is held
 * against. Leaves out matrices that are not symmetric.
 */
package plycrag.solve.sparse;
