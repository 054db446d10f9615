package dev.poleward.load.learner;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.io.IOException;
import java.nio.file.Path;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler.LegendLayout;
import org.knowm.xchart.style.Styler.LegendPosition;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * A picture with a few lines over two axes, each with a colour and a stroke of its own so that it
 * reads in grey too. For one thread.
 */
public final class Plot {

  private static final int WIDTH = 800;
  private static final int HEIGHT = 420;
  private static final Color INK = new Color(0x22, 0x22, 0x22);

  private static final Color[] COLOURS = {
    new Color(0x1f, 0x5f, 0xa8), new Color(0xb3, 0x54, 0x00), new Color(0x44, 0x44, 0x44)
  };
  private static final BasicStroke[] STROKES = {
    stroke(), stroke(10f, 6f), stroke(2f, 5f),
  };

  private final XYChart chart;
  private int lines;

  /** A picture without lines yet. */
  public Plot(String title, String xTitle, String yTitle) {
    chart =
        new XYChartBuilder()
            .width(WIDTH)
            .height(HEIGHT)
            .title(title)
            .xAxisTitle(xTitle)
            .yAxisTitle(yTitle)
            .build();
    var style = chart.getStyler();
    style.setChartBackgroundColor(Color.WHITE);
    style.setPlotBackgroundColor(Color.WHITE);
    style.setPlotBorderColor(Color.LIGHT_GRAY);
    style.setPlotGridLinesColor(new Color(0xdd, 0xdd, 0xdd));
    style.setChartFontColor(INK);
    style.setAxisTickLabelsColor(INK);
    style.setChartTitleBoxVisible(false);
    style.setLegendBorderColor(Color.WHITE);
    style.setLegendPosition(LegendPosition.OutsideS);
    style.setLegendLayout(LegendLayout.Horizontal);
    style.setChartTitleFont(font(Font.BOLD));
    style.setAxisTitleFont(font(Font.PLAIN));
    style.setAxisTickLabelsFont(font(Font.PLAIN));
    style.setLegendFont(font(Font.PLAIN));
    style.setLegendSeriesLineLength(48);
  }

  private static Font font(int weight) {
    return new Font(Font.SANS_SERIF, weight, 15);
  }

  private static BasicStroke stroke(float... dashes) {
    return dashes.length == 0
        ? new BasicStroke(2.5f)
        : new BasicStroke(2.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, dashes, 0);
  }

  /** The bounds of the axes and where they are marked. */
  public void axes(double xMin, double xMax, double xStep, double yMin, double yMax) {
    var style = chart.getStyler();
    style.setXAxisMin(xMin);
    style.setXAxisMax(xMax);
    style.setYAxisMin(yMin);
    style.setYAxisMax(yMax);
    style.setXAxisTickMarkSpacingHint((int) (xStep / (xMax - xMin) * WIDTH));
  }

  /** One more line. */
  public void line(String name, double[] x, double[] y) {
    XYSeries line = chart.addSeries(name, x, y);
    line.setMarker(SeriesMarkers.NONE);
    line.setLineColor(COLOURS[lines]);
    line.setLineStyle(STROKES[lines]);
    lines++;
  }

  /** Writes it as PNG, two pixels for each. */
  public void write(Path file) throws IOException {
    BitmapEncoder.saveBitmapWithDPI(chart, file.toString(), BitmapEncoder.BitmapFormat.PNG, 144);
  }
}
