package plycrag.layout;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.sheets.EngravedMark;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.OffcutPart;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.skin.Piece;
import plycrag.units.Decimal;

/**
 * Which geometry a file was made of, so that nobody mixes the files of two: eight digits of the
 * SHA-256 of every place and size that something of the wall has, to the micrometre. It changes
 * exactly when one of them does; names, prices, speeds and the looks of files leave it alone.
 */
public final class Revision {
  private static final int DIGITS = 8;
  private static final int DECIMALS = 3;

  private final StringBuilder told = new StringBuilder();

  private Revision() {}

  /** The revision of a layout, hexadecimal digits in capitals. */
  public static String of(Layout layout) {
    Revision revision = new Revision();
    double thickness = layout.wall().sheet().thickness();
    revision.add("sheet", thickness);
    layout.facets().forEach(facet -> revision.add(facet, thickness));
    layout.standing().forEach(member -> revision.add(member.body()));
    layout.faces().forEach(revision::add);
    for (OffcutPart part : layout.offcuts().parts()) {
      revision.add("offcut", part.place().getMinX(), part.place().getMaxX());
      revision.add("", part.place().getMinY(), part.place().getMaxY());
    }
    return revision.digits();
  }

  private void add(FacetLayout facet, double thickness) {
    for (Piece piece : facet.pieces()) {
      told.append("piece");
      add(facet, piece.outline(), 0);
      add(facet, piece.back(), thickness);
    }
    for (Member member : facet.members()) {
      add(member.body(thickness).mapped(facet.facet().plane()::toRoom));
    }
    facet.inserts().forEach(insert -> add("insert", insert.centre()));
    facet.screws().forEach(screw -> add("screw", screw.centre()));
    facet.screwPoints().forEach(point -> add("point", point.centre()));
  }

  private void add(FacetLayout facet, Geometry area, double behind) {
    for (Coordinate at : area.getCoordinates()) {
      add(facet.facet().plane().toRoom(new Vector3(at.x, at.y, behind)));
    }
  }

  private void add(Solid body) {
    told.append("body");
    body.near().forEach(this::add);
    body.far().forEach(this::add);
  }

  private void add(Vector3 place) {
    add("", place.x(), place.y(), place.z());
  }

  private void add(WorkedFace face) {
    LaidSheet sheet = face.sheet();
    add(sheet.faceUp().word(), sheet.stock().width(), sheet.stock().height());
    for (LaidPiece laid : sheet.pieces()) {
      add("laid", laid.kept());
    }
    for (MachinedHole hole : sheet.holes()) {
      add(hole.kind().word() + hole.bore().side().word(), hole.spot().x(), hole.spot().y());
      add("", hole.bore().diameter(), hole.bore().depth());
    }
    for (EngravedMark mark : face.marks()) {
      List<Coordinate> ends = List.of(mark.at(0, 0), mark.at(mark.height(), mark.height()));
      ends.forEach(end -> add(mark.text(), end.x, end.y));
    }
  }

  private void add(String what, Geometry geometry) {
    told.append(what);
    for (Coordinate at : geometry.getCoordinates()) {
      add("", at.x, at.y);
    }
  }

  private void add(String what, double... numbers) {
    told.append(what);
    for (double number : numbers) {
      told.append(' ').append(Decimal.of(number, DECIMALS));
    }
    told.append('\n');
  }

  private String digits() {
    try {
      byte[] bytes = told.toString().getBytes(StandardCharsets.UTF_8);
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest).substring(0, DIGITS).toUpperCase(Locale.ROOT);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
