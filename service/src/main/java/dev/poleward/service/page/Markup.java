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
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.title;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import dev.poleward.service.render.Printable;
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

  /** Beyond these the first column has to be told how wide it is. */
  private static final int FEW_COLUMNS = 6;

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
                    meta().withName("description").withContent(Printable.of(sheaf.title())),
                    title(Printable.of(sheaf.title())),
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

  /** Whatever somebody typed, without what markup cannot hold. */
  private DomContent words(String text) {
    return flavour.words(Printable.of(text));
  }

  private DomContent cellWords(String text) {
    return flavour.cell(Printable.of(text));
  }

  private DomContent leaf(Leaf leaf) {
    return section(h1(words(leaf.title())), each(leaf.blocks(), this::block)).withClass("leaf");
  }

  private DomContent block(Block block) {
    return switch (block) {
      case Block.Heading heading -> h2(words(heading.text()));
      case Block.Paragraph paragraph -> p(words(paragraph.text()));
      case Block.Aside aside -> p(words(aside.text())).withClass("aside");
      case Block.Bullets bullets -> ul(each(bullets.texts(), text -> li(words(text))));
      case Block.Notice notice -> noticeOf(notice);
      case Block.Facts facts ->
          dl(each(
                  facts.facts(),
                  fact -> div(dt(words(fact.name())), dd(words(fact.value()))).withClass("fact")))
              .withClass("facts");
      case Block.Table table -> tableOf(table);
      case Block.Blanks blanks -> blanksOf(blanks);
      case Block.Figure figure -> div(flavour.figure(figure.picture())).withClass("figure");
    };
  }

  private DomContent noticeOf(Block.Notice notice) {
    ContainerTag<?> said =
        p(strong(notice.kind().toUpperCase(Locale.ROOT) + " "), words(notice.text()));
    if (notice.source() != null) {
      said.with(span(text(" "), words(notice.source())).withClass("source"));
    }
    return div(said).withClass("notice " + notice.kind());
  }

  private DomContent tableOf(Block.Table table) {
    List<Block.Column> columns = table.columns();
    return div(table(
                caption(words(table.caption())),
                thead(tr(each(columns, this::headOf))),
                tbody(each(table.rows(), row -> row(columns, row))))
            .withCondClass(columns.size() > FEW_COLUMNS, "many"))
        .withClass("wide");
  }

  private DomContent headOf(Block.Column column) {
    return th(words(column.head())).attr("scope", "col").withClass(classOf(column));
  }

  private DomContent row(List<Block.Column> columns, List<String> cells) {
    return tr(
        each(
            IntStream.range(0, columns.size()).boxed().toList(),
            i -> {
              DomContent words = cellWords(cells.get(i));
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
                caption(words(blanks.caption())),
                thead(tr(each(blanks.heads(), head -> th(words(head)).attr("scope", "col")))),
                tbody(each(blanks.rows(), row -> blank(row, blanks.heads().size()))))
            .withClass("blanks"))
        .withClass("wide");
  }

  private DomContent blank(String known, int columns) {
    return tr(
        th(words(known)).attr("scope", "row"),
        each(IntStream.range(1, columns).boxed().toList(), _ -> td(rawHtml("&#160;"))));
  }
}
