package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import plycrag.catalog.FlatSteel;

/**
 * Looks for places for a piece of steel on the seats that it may have.
 *
 * @param isFree whether nothing but timber is where a piece or its screws would be
 * @param fits how a piece fits a seat as broad as it, if it does
 */
record SteelSearch(
    Predicate<SteelPlace> isFree, BiFunction<FlatSteel, SteelSeat, Optional<SteelFit>> fits) {

  /** A piece that fits, where it lies. */
  record Placed(SteelFit fit, SteelPlace place) {}

  /** One on the first side that takes it. */
  List<Placed> one(FlatSteel steel, List<SteelSeat> seats) {
    return seats.stream()
        .flatMap(seat -> onSeat(steel, seat))
        .findFirst()
        .map(List::of)
        .orElse(List.of());
  }

  /** One on each of two sides, as near to their middles as lets their screws pass. */
  List<Placed> pair(FlatSteel steel, List<SteelSeat> seats) {
    List<List<Placed>> sides =
        seats.stream()
            .map(seat -> onSeat(steel, seat).toList())
            .filter(all -> !all.isEmpty())
            .toList();
    for (int at = 0; at < sides.size(); at++) {
      for (List<Placed> later : sides.subList(at + 1, sides.size())) {
        for (Placed one : sides.get(at)) {
          for (Placed other : later) {
            if (one.fit().equals(other.fit()) && !one.place().meets(other.place())) {
              return List.of(one, other);
            }
          }
        }
      }
    }
    return List.of();
  }

  /** Evenly along a seat, each as near to its place as it finds room. */
  List<Placed> row(FlatSteel steel, List<SteelSeat> seats, int count) {
    return seats.stream()
        .map(seat -> row(seat, steel, count))
        .filter(row -> !row.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  private List<Placed> row(SteelSeat seat, FlatSteel steel, int count) {
    double width = steel.legs().width();
    double most = (seat.breadth() - width) / 2;
    double apart = 2 * most / (count - 1);
    List<Placed> row = new ArrayList<>();
    for (int at = 0; at < count && apart > width; at++) {
      seat.steps(width, at * apart - most, (apart - width) / 2)
          .flatMap(one -> placed(one, fits.apply(steel, one)))
          .findFirst()
          .ifPresent(row::add);
    }
    return row.size() == count ? row : List.of();
  }

  private Stream<Placed> onSeat(FlatSteel steel, SteelSeat seat) {
    return seat.steps(steel.legs().width()).flatMap(one -> placed(one, fits.apply(steel, one)));
  }

  private Stream<Placed> placed(SteelSeat seat, Optional<SteelFit> fit) {
    return fit
        .map(one -> new Placed(one, seat.place(one)))
        .filter(one -> isFree.test(one.place()))
        .stream();
  }
}
