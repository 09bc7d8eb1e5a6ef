package plycrag.wall;

/**
 * The least distances that must remain, mm.
 *
 * @param insertToTimber from an insert's flange to the timber behind
 * @param boltToTimber from the bolt zone to the timber behind
 * @param insertToEdge from an insert's flange to the edge of its piece
 * @param insertToInsert between the flanges of two inserts
 * @param screwToInsert from a screw's thread to an insert's flange
 * @param screwToSheetEdge from a screw's centre to the edge of its piece
 * @param screwToMemberEdge from a screw's centre to the edge of its member
 * @param screwToMemberEnd from a screw's centre to the end of its member
 * @param screwPenetration of a screw into the timber
 * @param screwToFarSide from a screw's point to the far side of the timber
 * @param barrelToFace from the end of an insert's barrel to the climbing face
 */
public record Clearances(
    double insertToTimber,
    double boltToTimber,
    double insertToEdge,
    double insertToInsert,
    double screwToInsert,
    double screwToSheetEdge,
    double screwToMemberEdge,
    double screwToMemberEnd,
    double screwPenetration,
    double screwToFarSide,
    double barrelToFace) {}
