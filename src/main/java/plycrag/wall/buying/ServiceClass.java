package plycrag.wall.buying;

import plycrag.units.LengthUnit;
import plycrag.wall.buying.MaterialWishes.Environment;

/**
 * What an environment asks of plywood and timber (the classes of EN 1995-1-1 2.3.1.3, EN 636, EN
 * 335, PS 1 and AWPA U1, from memory).
 */
public final class ServiceClass {
  private ServiceClass() {}

  /** How the plywood is glued. */
  public static String bond(Environment environment, LengthUnit unit) {
    boolean metric = unit == LengthUnit.MM;
    return switch (environment) {
      case INDOORS ->
          metric ? "service class 1: EN 636-2, for use in damp rooms" : "dry service: Exposure 1";
      case DAMP ->
          metric
              ? "service class 2: EN 636-2, glue bond class 2 of EN 314-2"
              : "damp service: Exterior";
      case OUTDOORS ->
          metric
              ? "service class 3: EN 636-3, glue bond class 3 of EN 314-2"
              : "wet service: Exterior";
    };
  }

  /** What the timber is treated with. */
  public static String treatment(Environment environment, LengthUnit unit) {
    boolean metric = unit == LengthUnit.MM;
    return switch (environment) {
      case INDOORS -> "untreated";
      case DAMP -> metric ? "treated for use class 2 of EN 335" : "treated for AWPA UC2";
      case OUTDOORS ->
          metric
              ? "treated for use class 3 of EN 335, cut ends as well"
              : "treated for AWPA UC3B, cut ends as well";
    };
  }
}
