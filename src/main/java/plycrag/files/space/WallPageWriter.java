package plycrag.files.space;

import java.util.Base64;
import plycrag.document.WallPage;
import plycrag.files.html.HtmlText;

/** Writes a wall in space as a page. */
public final class WallPageWriter {
  private WallPageWriter() {}

  /**
   * A page that needs nothing but itself.
   *
   * @param page what it tells
   * @param model the scene as a binary glTF file
   */
  public static String write(WallPage page, byte[] model) {
    return page(page, model, new Line("", ""));
  }

  /**
   * The same page, which asks the program that serves it for changes.
   *
   * @param page what it tells at first
   * @param model the scene of that
   * @param revision the number of that, which it names when it asks for what came since
   */
  public static String writeLive(WallPage page, byte[] model, int revision) {
    return page(page, model, new Line("; connect-src 'self'", Integer.toString(revision)));
  }

  /**
   * A page without a wall, which asks for one.
   *
   * @param name what it waits for
   */
  public static String writeWaiting(String name) {
    return HtmlText.fill(
        """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8"/>
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; \
        style-src 'unsafe-inline'; script-src 'unsafe-inline'; connect-src 'self'"/>
        <meta name="viewport" content="width=device-width, initial-scale=1"/>
        <title>%s</title>
        <style>
        %s</style>
        </head>
        <body>
        <h1>%s</h1>
        <p>There is no wall to be seen yet.</p>
        <div id="banner" role="alert" hidden="hidden"></div>
        <script>
        const news = new EventSource("changes?revision=0");
        news.addEventListener("wall", () => location.reload());
        news.addEventListener("fault", event => {
          const banner = document.getElementById("banner");
          banner.textContent = JSON.parse(event.data).words;
          banner.hidden = false;
        });
        </script>
        </body>
        </html>
        """,
        HtmlText.of(name), PageScripts.own("model.css"), HtmlText.of(name));
  }

  /** How a page is served; a page that is not has neither. */
  private record Line(String policy, String revision) {}

  private static String page(WallPage page, byte[] model, Line line) {
    return HtmlText.fill(
            """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8"/>
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; \
            img-src data:; style-src 'unsafe-inline'; script-src 'unsafe-inline' data:%s"/>
            <meta name="viewport" content="width=device-width, initial-scale=1"/>
            <title>%s in space</title>
            <style>
            """,
            line.policy(), HtmlText.of(page.title()))
        + PageScripts.own("model.css")
        + "</style>\n<script type=\"importmap\">\n"
        + PageScripts.importMap()
        + "\n</script>\n</head>\n"
        + HtmlText.fill("<body data-revision=\"%s\">\n", line.revision())
        + body(page)
        + "<script type=\"application/json\" id=\"wall\">"
        + PageData.json(page).replace("<", "\\u003c")
        + "</script>\n<script type=\"text/plain\" id=\"model\">"
        + Base64.getEncoder().encodeToString(model)
        + "</script>\n<script type=\"module\">\n"
        + PageScripts.own("model.js")
        + "</script>\n</body>\n</html>\n";
  }

  private static String body(WallPage page) {
    return HtmlText.fill(
        """
        <header>
        <h1 id="title">%s</h1>
        <p id="stamp" hidden="hidden"></p>
        <div id="banner" role="alert" hidden="hidden"></div>
        <dl id="figures"></dl>
        </header>
        <main>
        <div id="stage">
        <div id="canvas" tabindex="0" role="application" aria-label="The wall in space. Arrow keys \
        turn it, plus and minus bring it nearer and farther."></div>
        <p id="dark" hidden="hidden">This browser shows no pictures in space (WebGL is off or \
        missing). The same wall is drawn in index.html and in drawings/drawings.pdf.</p>
        <div id="looks" role="group" aria-label="Look from"></div>
        </div>
        <div id="panel">
        <section aria-labelledby="order"><h2 id="order">Order of assembly</h2>
        <p><label for="step">Built as far as step <output id="step-number"></output></label>
        <input type="range" id="step" min="0" step="1"/></p>
        <p id="step-words" aria-live="polite"></p></section>
        <section aria-labelledby="kinds-head"><h2 id="kinds-head">Shown</h2>
        <div id="kinds"></div></section>
        <section aria-labelledby="part-head"><h2 id="part-head">A part</h2>
        <p><label for="mark">Its mark</label>
        <input id="mark" list="marks" autocomplete="off" spellcheck="false"/>\
        <datalist id="marks"></datalist></p>
        <p id="part" aria-live="polite">Choose one in the picture, or write its mark.</p></section>
        <section aria-labelledby="found"><h2 id="found">Found</h2><ol id="remarks"></ol></section>
        <p class="caution">%s</p>
        </div>
        </main>
        """,
        HtmlText.of(page.title()), HtmlText.of(page.caution()));
  }
}
