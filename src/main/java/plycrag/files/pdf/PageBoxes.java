package plycrag.files.pdf;

import java.io.IOException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import plycrag.units.Decimal;

/** A page's boxes, all alike: programs that tile or impose pages take one or another. */
final class PageBoxes {
  private static final double POINTS = 72 / 25.4;
  private static final int DECIMALS = 4;

  private PageBoxes() {}

  /** Makes a page as large as its paper, mm. */
  static void set(PDPage page, double width, double height) throws IOException {
    COSArray box = new COSArray();
    box.add(COSInteger.ZERO);
    box.add(COSInteger.ZERO);
    box.add(points(width));
    box.add(points(height));
    for (COSName name : new COSName[] {COSName.MEDIA_BOX, COSName.CROP_BOX, COSName.TRIM_BOX}) {
      page.getCOSObject().setItem(name, box);
    }
  }

  private static COSFloat points(double millimetres) throws IOException {
    return new COSFloat(Decimal.of(millimetres * POINTS, DECIMALS));
  }
}
