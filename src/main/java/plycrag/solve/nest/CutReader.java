package plycrag.solve.nest;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;
import plycrag.solve.guillotine.Cut;
import plycrag.solve.guillotine.CutSheet;
import plycrag.solve.guillotine.Cutting;
import plycrag.solve.guillotine.Offcut;
import plycrag.solve.guillotine.Part;
import plycrag.solve.nest.SheetCutting.SawCut;

/** Reads off a plan's tree from where to where each of its cuts runs. */
final class CutReader {
  private final double kerf;
  private final List<SawCut> cuts = new ArrayList<>();
  private final List<Envelope> offcuts = new ArrayList<>();

  private CutReader(double kerf) {
    this.kerf = kerf;
  }

  static SheetCutting of(CutSheet sheet, Cutting cutting) {
    CutReader reader = new CutReader(cutting.kerf());
    double width = sheet.kind().width();
    double height = sheet.kind().height();
    double trim = cutting.trim();
    if (trim > 0) {
      double first = Shapes.onGrid(trim - cutting.kerf());
      reader.cuts.add(new SawCut(false, first, 0, width));
      reader.cuts.add(new SawCut(true, first, trim, height));
      reader.cuts.add(new SawCut(false, height - trim, trim, width));
      reader.cuts.add(new SawCut(true, width - trim, trim, height - trim));
    }
    reader.read(sheet.whole(), new Envelope(trim, width - trim, trim, height - trim));
    return new SheetCutting(reader.cuts, reader.offcuts);
  }

  private void read(Part part, Envelope room) {
    if (part instanceof Cut cut) {
      read(cut, room);
    } else if (part instanceof Offcut) {
      offcuts.add(room);
    }
  }

  private void read(Cut cut, Envelope room) {
    double at = cut.at();
    if (cut.upright()) {
      cuts.add(new SawCut(true, at, room.getMinY(), room.getMaxY()));
    } else {
      cuts.add(new SawCut(false, at, room.getMinX(), room.getMaxX()));
    }
    read(cut.near(), near(cut, room));
    cut.far().ifPresent(far -> read(far, far(cut, room)));
  }

  private static Envelope near(Cut cut, Envelope room) {
    return cut.upright()
        ? new Envelope(room.getMinX(), cut.at(), room.getMinY(), room.getMaxY())
        : new Envelope(room.getMinX(), room.getMaxX(), room.getMinY(), cut.at());
  }

  private Envelope far(Cut cut, Envelope room) {
    double from = Shapes.onGrid(cut.at() + kerf);
    return cut.upright()
        ? new Envelope(from, room.getMaxX(), room.getMinY(), room.getMaxY())
        : new Envelope(room.getMinX(), room.getMaxX(), from, room.getMaxY());
  }
}
