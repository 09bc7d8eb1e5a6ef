package plycrag.proof.replay;

import org.locationtech.jts.geom.Coordinate;

/**
 * A hole as a program makes it.
 *
 * @param visit in which it is made
 * @param centre on the sheet, mm
 * @param diameter mm
 * @param bottom Z of its bottom, mm
 * @param left whether a tool that goes round goes against the clock, so that it climbs
 * @param strokes how often the tool cuts to the bottom from above it
 */
record MadeHole(
    Visit visit, Coordinate centre, double diameter, double bottom, boolean left, int strokes) {}
