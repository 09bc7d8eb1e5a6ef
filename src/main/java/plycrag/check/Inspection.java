package plycrag.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.Stream;
import plycrag.check.clearance.BarrelAgainstThickness;
import plycrag.check.clearance.InsertAgainstInsert;
import plycrag.check.clearance.InsertClear;
import plycrag.check.clearance.InsertInFront;
import plycrag.check.clearance.InsertLeftOut;
import plycrag.check.clearance.MembersOverlap;
import plycrag.check.clearance.ScrewAgainstMemberEdge;
import plycrag.check.clearance.ScrewAgainstMemberEnd;
import plycrag.check.clearance.ScrewAgainstSheetEdge;
import plycrag.check.clearance.ScrewLength;
import plycrag.check.clearance.SeamBacked;
import plycrag.check.clearance.SeamTolerance;
import plycrag.check.clearance.SheetsPierced;
import plycrag.check.making.BracketFits;
import plycrag.check.making.CornersMitred;
import plycrag.check.making.Countersinks;
import plycrag.check.making.CutoutsFit;
import plycrag.check.making.EdgeTrim;
import plycrag.check.making.EndsSawn;
import plycrag.check.making.FlangeRecess;
import plycrag.check.making.HardwareClear;
import plycrag.check.making.HoleTools;
import plycrag.check.making.InsertsFit;
import plycrag.check.making.InsertsReachable;
import plycrag.check.making.JointScrewLength;
import plycrag.check.making.JointScrewRoom;
import plycrag.check.making.KeepOutsKept;
import plycrag.check.making.MemberWithinStock;
import plycrag.check.making.OutlineTool;
import plycrag.check.making.PiecesMarked;
import plycrag.check.making.PinsFit;
import plycrag.check.making.PlateOnFloor;
import plycrag.check.making.RoomForStuds;
import plycrag.check.making.ScrewSold;
import plycrag.check.making.SheetsSaved;
import plycrag.check.making.StandsOnTimber;
import plycrag.check.making.WithinTravel;
import plycrag.check.making.ZonesFit;
import plycrag.check.rule.Rule;
import plycrag.check.standing.BroughtIn;
import plycrag.check.standing.FallSpace;
import plycrag.check.standing.PeopleSafe;
import plycrag.check.standing.RoomFits;
import plycrag.check.standing.StandsFirm;
import plycrag.check.standing.StandsUp;
import plycrag.check.standing.SupportHolds;
import plycrag.check.standing.SupportJoints;
import plycrag.check.standing.SwingClear;
import plycrag.finding.Finding;
import plycrag.layout.Layout;
import plycrag.layout.pattern.Hindrance;
import plycrag.layout.pattern.InsertHindrances;

/** Holds a layout against every rule. */
public final class Inspection {
  /** All but those of what inserts keep clear of, in the order of their findings. */
  private static final List<Rule> FURTHER =
      List.of(
          new ScrewAgainstSheetEdge(),
          new ScrewAgainstMemberEdge(),
          new ScrewAgainstMemberEnd(),
          new SeamBacked(),
          new SeamTolerance(),
          new MembersOverlap(),
          new InsertInFront(),
          new SheetsPierced(),
          new BarrelAgainstThickness(),
          new ScrewLength(),
          new RoomForStuds(),
          new StandsOnTimber(),
          new CutoutsFit(),
          new ZonesFit(),
          new CornersMitred(),
          new JointScrewLength(),
          new JointScrewRoom(),
          new BracketFits(),
          new HardwareClear(),
          new ScrewSold(),
          new MemberWithinStock(),
          new EndsSawn(),
          new PlateOnFloor(),
          new HoleTools(),
          new Countersinks(),
          new FlangeRecess(),
          new PiecesMarked(),
          new PinsFit(),
          new EdgeTrim(),
          new OutlineTool(),
          new KeepOutsKept(),
          new WithinTravel(),
          new SupportHolds(),
          new SupportJoints(),
          new StandsFirm(),
          new SwingClear(),
          new RoomFits(),
          new StandsUp(),
          new BroughtIn(),
          new FallSpace(),
          new PeopleSafe(),
          new InsertsReachable(),
          new InsertsFit(),
          new SheetsSaved(),
          new InsertLeftOut());

  private static final List<Rule> RULES = all();

  private Inspection() {}

  /** First what is there before the inserts, then they themselves, then what comes to them. */
  private static List<Rule> all() {
    List<Rule> all = new ArrayList<>();
    InsertHindrances.ALL.stream()
        .filter(hindrance -> !hindrance.comesLater())
        .forEach(hindrance -> all.add(new InsertClear(hindrance)));
    all.add(new InsertAgainstInsert());
    InsertHindrances.ALL.stream()
        .filter(Hindrance::comesLater)
        .forEach(hindrance -> all.add(new InsertClear(hindrance)));
    all.addAll(FURTHER);
    return List.copyOf(all);
  }

  /** Every rule there is, in the order of the findings. */
  public static List<Rule> rules() {
    return RULES;
  }

  /** The verdict; rules ask side by side and are heard in order. */
  public static CheckedLayout of(Layout layout) {
    List<ForkJoinTask<List<Finding>>> asked =
        RULES.stream().map(rule -> ForkJoinTask.adapt(() -> rule.findings(layout))).toList();
    ForkJoinTask.invokeAll(asked);
    List<Finding> findings =
        asked.stream()
            .flatMap(rule -> rule.join().stream())
            .sorted(Comparator.comparing(Finding::severity))
            .toList();
    return judged(layout, findings);
  }

  /**
   * The same verdict with more to know, as what merchants lack, which no rule sees.
   *
   * @param more findings that are no errors
   */
  public static CheckedLayout noting(CheckedLayout checked, List<Finding> more) {
    return judged(
        checked.layout(),
        Stream.concat(checked.findings().stream(), more.stream())
            .sorted(Comparator.comparing(Finding::severity))
            .toList());
  }

  private static CheckedLayout judged(Layout layout, List<Finding> findings) {
    boolean refused = findings.stream().anyMatch(Finding::isError);
    return refused ? new RefusedLayout(layout, findings) : new ApprovedLayout(layout, findings);
  }
}
