/** Makes a wall of what users' files say. Only {@code app} may know it. */
package plycrag.read;
