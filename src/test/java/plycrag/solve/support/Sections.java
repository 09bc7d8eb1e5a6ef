package plycrag.solve.support;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.FloorAxes;
import plycrag.units.Decimal;
import plycrag.units.LengthUnit;
import plycrag.units.Tape;

/** Makes sites by hand and reads what is set for them, in numbers that a reader can follow. */
final class Sections {
  static final Tape TAPE = new Tape(LengthUnit.MM);

  private Sections() {}

  /** Timber that is all as thick and as deep. */
  static SupportSite.Timber timber(double breadth, double depth) {
    return new SupportSite.Timber(breadth, depth, depth, depth, depth, depth, breadth, depth);
  }

  /** Timber of 40 by 100 mm, as long as is wanted. */
  static SupportSite site(List<Double> studs, double bay, BackEdge... backs) {
    return site(timber(40, 100), studs, bay, 10_000, backs);
  }

  static SupportSite site(
      SupportSite.Timber timber,
      List<Double> studs,
      double bay,
      double longest,
      BackEdge... backs) {
    return new SupportSite(FloorAxes.FIRST, List.of(backs), studs, timber, bay, longest, TAPE);
  }

  /** The back of a frame, its places y, z from the lower end to the upper. */
  static BackEdge back(String facet, double angle, double... places) {
    return new BackEdge(
        facet,
        angle,
        place(places[0], places[1]),
        place(places[2], places[3]),
        List.of(),
        List.of(),
        List.of(),
        0);
  }

  /** The same with studs that are all as long and have room on both sides. */
  static BackEdge studded(BackEdge back, Double... studs) {
    return slanting(back, Stream.of(studs).map(stud -> 0.0).toList(), studs);
  }

  /** The same under an upper edge that falls by so much, along the back, at each stud. */
  static BackEdge slanting(BackEdge back, List<Double> falls, Double... studs) {
    List<Double> all = List.of(studs);
    return new BackEdge(back.facet(), back.angle(), back.low(), back.high(), all, falls, all, 0);
  }

  static SectionPlace place(double y, double z) {
    return new SectionPlace(y, z);
  }

  static List<SupportTimber> timbers(SupportFrame frame, TimberUse use) {
    return frame.timbers().stream().filter(timber -> timber.use() == use).toList();
  }

  /** The corners of its side, counter-clockwise from the lowest, of two the left one. */
  static String side(SupportTimber timber) {
    Coordinate[] ring = timber.outline().getExteriorRing().getCoordinates();
    return Arrays.stream(ring, 0, ring.length - 1)
        .map(corner -> number(corner.x) + " " + number(corner.y))
        .collect(Collectors.joining(", "));
  }

  /** What meets what, where and along what length. */
  static String words(Meeting meeting) {
    String other = meeting.second().map(second -> second.use().name()).orElse(meeting.facet());
    return meeting.first().use()
        + (meeting.lapped() ? " beside " : " on ")
        + other
        + " at "
        + words(meeting.place())
        + " along "
        + number(meeting.length());
  }

  static String words(SectionPlace place) {
    return number(place.y()) + " " + number(place.z());
  }

  /** What meets anything on a use of timber. */
  static List<String> meetings(SupportFrame frame, TimberUse first) {
    return frame.meetings().stream()
        .filter(meeting -> meeting.first().use() == first)
        .map(Sections::words)
        .toList();
  }

  private static String number(double length) {
    return Decimal.of(length, 2);
  }
}
