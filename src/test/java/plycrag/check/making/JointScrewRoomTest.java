package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Two studs side by side over 510 mm; EN 1995-1-1 Table 8.2, predrilled, worked by hand. */
class JointScrewRoomTest {

  @Test
  void passesWhereThereIsRoom() {
    Found.by("joint-screw-room", Found.SEAMED).isNothing();
    Found.by("joint-screw-room", Found.BAY).isNothing();
  }

  /**
   * EN 1995-1-1 Table 8.4, from memory: 8 d of 12 mm are 96 where two plates of 90 meet at a fold;
   * of 11.2 mm 89.6.
   */
  @Test
  void findsBoltsThatAreTooThick() {
    String fold = "[wall]\nwidth = 1200\n[[facet]]\nlength = 500\n[[facet]]\nlength = 500\n";
    Found.by("joint-screw-room", fold).isNothing();
    Found.by("joint-screw-room", fold + "[joints]\nbolt-diameter = 12\n")
        .times(1)
        .says(
            "where PL2 lies against PL3, bolts of 12 mm find no room: 48 mm to the sides and 84 mm to"
                + " the ends of the first, 48 mm and 84 mm of the second, and 60 mm between each"
                + " other are required")
        .suggests(
            "choose bolts of 11.2 mm or thinner ([joints] bolt-diameter), let them overlap by 228"
                + " mm on a face of 96 mm at least, or put a bracket beside them");
  }

  /** 2 × 3 d of 12 mm are 72, and only 60 mm are there; 24 d + 5 d are 348. 6 × 10 mm are 60. */
  @Test
  void findsFacesThatAreTooNarrow() {
    Found.by(
            "joint-screw-room",
            Found.SEAMED + "section = [45, 60]\n[joints]\nscrew-diameter = 12\n")
        .times(1)
        .isError(false)
        .says(
            "where ST2 lies against ST3, screws of 12 mm find no room: 36 mm to the sides and 144 mm"
                + " to the ends of the first, 36 mm and 144 mm of the second, and 60 mm between"
                + " each other are required (EN 1995-1-1 Table 8.2)")
        .suggests(
            "choose screws of 10 mm or thinner ([joints] screw-diameter), let them overlap by 348"
                + " mm on a face of 72 mm at least, or put a bracket beside them");
  }
}
