/**
 * A wall in space as one web page that a browser shows without asking for anything.
 *
 * <p>Needs: a {@link plycrag.document.WallPage}, and its {@link plycrag.document.Scene} as the
 * binary glTF file that other programs are given too, so that what is shown is what was delivered.
 *
 * <p>Guarantees: one self-contained page, the same bytes everywhere. It shows the parts of the
 * scene by their kinds, which can be left out one by one, and builds the wall step by step; it
 * tells what is known of a part that is chosen, and looks to where something was found. All of it
 * can be done with keys alone, and is read aloud where that is asked for. Nothing moves by itself.
 * The page says in words what it could not show, where a browser has no graphics.
 *
 * <p>How: {@link plycrag.files.space.PageScripts} puts three.js and the parts of it that are needed
 * into the page as modules of their own addresses, none of which is anywhere else; {@code
 * page/model.js} shows the scene, and {@code page/model.css} lays the page out. A page that is live
 * asks the program that serves it for what changed, and for nothing else.
 *
 * <p>Leaves out: textures, shadows, and sections.
 *
 * @see <a href="https://threejs.org/docs/">three.js</a>
 */
package plycrag.files.space;
