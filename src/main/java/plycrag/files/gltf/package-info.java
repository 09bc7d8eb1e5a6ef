/**
 * Scenes as glTF 2.0 in one binary file, for programs that show or reckon in space.
 *
 * <p>Needs: a {@link plycrag.document.Scene}.
 *
 * <p>Guarantees: one glTF scene with a node a part, in their order, each with its name, its kind
 * and, where it has one, its facet in {@code extras}; metres; the same bytes everywhere. Places lie
 * on a grid of 1 µm, ways are told to six decimals. A body is a mesh of its node, its corners in
 * the scene's axes, each once, so that edges are shared by number; without normals, which means
 * flat faces by the specification. A spot is a node without a mesh that is moved and turned: its
 * own x runs to its right, y up, z out of it. A material a kind that has bodies.
 *
 * <p>A scene's axes are left-handed, glTF's right-handed with y up, so a place (x, y, z) is written
 * (x, z, y)/1000: the swap stands in {@link plycrag.files.gltf.GltfAxes} alone. It turns no sense
 * round, since what is counter-clockwise to the eye stays so.
 *
 * <p>Leaves out: normals, textures, animations, and equal meshes as one, which would save little.
 *
 * @see <a href="https://registry.khronos.org/glTF/specs/2.0/glTF-2.0.html">glTF 2.0</a>
 */
package plycrag.files.gltf;
