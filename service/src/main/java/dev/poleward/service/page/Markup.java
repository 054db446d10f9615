package dev.poleward.service.page;

import static j2html.TagCreator.body;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.document;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.head;
import static j2html.TagCreator.html;
import static j2html.TagCreator.li;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.style;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.title;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.Config;
import j2html.rendering.FlatHtml;
import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** A sheaf as markup that is HTML and well-formed XML at once. For one thread. */
final class Markup {

  private static final Config WELL_FORMED = Config.defaults().withEmptyTagsClosed(true);

  private final Flavour flavour;
  private final String style;

  /**
   * Writes in a flavour.
   *
   * @param style CSS
   */
  Markup(Flavour flavour, String style) {
    this.flavour = flavour;
    this.style = style;
  }

  String of(Sheaf sheaf) {
    ContainerTag<?> page =
        html(
                head(
                    meta().withCharset("UTF-8"),
                    meta().withName("viewport").withContent("width=device-width, initial-scale=1"),
                    meta().withName("description").withContent(sheaf.title()),
                    title(sheaf.title()),
                    style(rawHtml(style))),
                body(main(each(sheaf.leaves(), this::leaf))))
            .withLang("en");
    try {
      return document()
          .render(FlatHtml.into(new StringBuilder(), WELL_FORMED))
          .append(page.render(FlatHtml.into(new StringBuilder(), WELL_FORMED)).toString())
          .toString();
    } catch (IOException e) {
      throw new UncheckedIOException("text can be written to memory", e);
    }
  }

  private DomContent leaf(Leaf leaf) {
    return section(h1(flavour.words(leaf.title())), each(leaf.blocks(), this::block))
        .withClass("leaf");
  }

  private DomContent block(Block block) {
    return switch (block) {
      case Block.Heading heading -> h2(flavour.words(heading.text()));
      case Block.Paragraph paragraph -> p(flavour.words(paragraph.text()));
      case Block.Aside aside -> p(flavour.words(aside.text())).withClass("aside");
      case Block.Bullets bullets -> ul(each(bullets.texts(), text -> li(flavour.words(text))));
      case Block.Notice notice -> noticeOf(notice);
      case Block.Facts facts ->
          dl(each(
                  facts.facts(),
                  fact ->
                      div(dt(flavour.words(fact.name())), dd(flavour.words(fact.value())))
                          .withClass("fact")))
              .withClass("facts");
      case Block.Table table -> tableOf(table);
      case Block.Blanks blanks -> blanksOf(blanks);
      case Block.Figure figure -> div(flavour.figure(figure.picture())).withClass("figure");
    };
  }

  private DomContent noticeOf(Block.Notice notice) {
    ContainerTag<?> said =
        p(strong(notice.kind().toUpperCase(Locale.ROOT) + " "), flavour.words(notice.text()));
    if (notice.source() != null) {
      said.with(span(flavour.words(" " + notice.source())).withClass("source"));
    }
    return div(said).withClass("notice " + notice.kind());
  }

  private DomContent tableOf(Block.Table table) {
    List<Block.Column> columns = table.columns();
    return div(table(
            caption(flavour.words(table.caption())),
            thead(tr(each(columns, this::headOf))),
            tbody(each(table.rows(), row -> row(columns, row)))))
        .withClass("wide");
  }

  private DomContent headOf(Block.Column column) {
    return th(flavour.words(column.head())).attr("scope", "col").withClass(classOf(column));
  }

  private DomContent row(List<Block.Column> columns, List<String> cells) {
    return tr(
        each(
            IntStream.range(0, columns.size()).boxed().toList(),
            i -> {
              DomContent words = flavour.words(cells.get(i));
              // On a phone the head stands before each cell.
              String head = columns.get(i).head();
              return i == 0
                  ? th(words).attr("scope", "row").withClass(classOf(columns.get(i)))
                  : td(words).withClass(classOf(columns.get(i))).attr("data-head", head);
            }));
  }

  private static String classOf(Block.Column column) {
    return switch (column.kind()) {
      case TEXT -> "text";
      case NUMBER -> "number";
    };
  }

  private DomContent blanksOf(Block.Blanks blanks) {
    return div(table(
                caption(flavour.words(blanks.caption())),
                thead(
                    tr(each(blanks.heads(), head -> th(flavour.words(head)).attr("scope", "col")))),
                tbody(each(blanks.rows(), row -> blank(row, blanks.heads().size()))))
            .withClass("blanks"))
        .withClass("wide");
  }

  private DomContent blank(String known, int columns) {
    return tr(
        th(flavour.words(known)).attr("scope", "row"),
        each(IntStream.range(1, columns).boxed().toList(), _ -> td(rawHtml("&#160;"))));
  }
}
