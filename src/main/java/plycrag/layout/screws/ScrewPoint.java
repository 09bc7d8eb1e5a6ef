package plycrag.layout.screws;

import java.util.Optional;
import org.locationtech.jts.geom.Point;

/**
 * Where a plain screw of a hold that is screwed on may go; nothing drills for it.
 *
 * @param mark the zone's name and a number, from below and from the left
 * @param piece the mark of the piece that it goes through
 * @param member the mark of the member right behind it, where there is one
 * @param centre in (u, v), on the marking grid
 */
public record ScrewPoint(String mark, String piece, Optional<String> member, Point centre) {}
