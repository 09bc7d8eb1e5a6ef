package plycrag.proof.replay;

/**
 * Heights of a sheet on the machine, Z in mm from the programs' zero.
 *
 * @param top of the sheet
 * @param bottom of the sheet
 * @param floor as low as the tool may go
 * @param clearance at which it may go across
 * @param safe first and last, and over what holds the sheet
 */
public record Heights(double top, double bottom, double floor, double clearance, double safe) {}
