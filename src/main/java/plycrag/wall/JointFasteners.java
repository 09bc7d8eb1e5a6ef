package plycrag.wall;

/**
 * What holds the members of the frame together.
 *
 * @param bracketScrews in each bracket where one member ends on another
 * @param boltDiameter of the bolts through the plates at a fold, mm
 * @param boltSpacing greatest between them, mm
 * @param screwDiameter of the screws that join members side by side, mm
 * @param screwLength of those screws, mm
 * @param screwSpacing greatest between them, mm
 */
public record JointFasteners(
    int bracketScrews,
    double boltDiameter,
    double boltSpacing,
    double screwDiameter,
    double screwLength,
    double screwSpacing) {}
