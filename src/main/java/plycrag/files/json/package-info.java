/**
 * JSON text, and the manifest of an output folder.
 *
 * <p>Needs values; {@link plycrag.files.json.JsonText} makes one object a line, from which writers
 * here and in {@code files.geojson} are put together.
 *
 * <p>Guarantees: a manifest lists every file of its folder but itself, sorted by path, each with
 * its size and SHA-256; it names the parameter file without the folder it lay in. Lists run one
 * entry a line. A text that is no manifest of this program reads as none, whatever is wrong with
 * it; keys that are not known are passed over, since later versions may add some.
 *
 * <p>Leaves out: the folder itself, which {@link plycrag.files.OutputFolder} handles. Sees {@code
 * units} and {@code document}.
 */
package plycrag.files.json;
