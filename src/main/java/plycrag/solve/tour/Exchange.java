package plycrag.solve.tour;

/**
 * A change to a tour that has lost the way from a fixed place to the next, called last: last is
 * joined to another place, which loses a way in turn. Afterwards the tour is whole again, and the
 * way from the fixed place to the next, called end, is the one still to pay for.
 */
sealed interface Exchange {
  /** The ways lost less the ways gained, the way from the fixed place to the end not counted. */
  double open();

  void apply(ArrayTour tour);

  /** Notes the places whose ways changed. */
  void note(Worklist worklist);

  /**
   * Turns the stretch from last to end around, so that last is joined to what followed end.
   *
   * @param last the place after the fixed one
   * @param joined what last is joined to
   */
  record Reversal(int last, int joined, int end, double open) implements Exchange {
    @Override
    public void apply(ArrayTour tour) {
      tour.reverse(last, end);
    }

    @Override
    public void note(Worklist worklist) {
      worklist.add(last);
      worklist.add(joined);
      worklist.add(end);
    }
  }

  /**
   * Joins last to a place before the one called freed, which makes a ring of the stretch between
   * them, and opens the ring elsewhere, between inside and end, to join inside to freed.
   *
   * @param last the place after the fixed one
   * @param joined what last is joined to
   * @param freed what followed joined
   * @param inside the place on the ring that is joined to freed
   */
  record RingOpening(int last, int joined, int freed, int inside, int end, double open)
      implements Exchange {
    /** The same ring, opened between inside and another end. */
    RingOpening openedTo(int otherEnd, double otherOpen) {
      return new RingOpening(last, joined, freed, inside, otherEnd, otherOpen);
    }

    @Override
    public void apply(ArrayTour tour) {
      if (tour.next(inside) == end) {
        tour.reverse(last, joined);
        tour.reverse(joined, end);
        tour.reverse(inside, last);
      } else {
        tour.reverse(last, end);
        tour.reverse(inside, joined);
      }
    }

    @Override
    public void note(Worklist worklist) {
      worklist.add(last);
      worklist.add(joined);
      worklist.add(freed);
      worklist.add(inside);
      worklist.add(end);
    }
  }
}
