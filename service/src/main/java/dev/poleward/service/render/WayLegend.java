package dev.poleward.service.render;

import java.util.ArrayList;
import java.util.List;

/** What the marks of the way mean. */
final class WayLegend {

  private WayLegend() {}

  static List<Legend.Entry> entries() {
    List<Legend.Entry> entries = new ArrayList<>();
    entries.add(new Legend.Entry((sheet, x, y) -> RungMark.pointer(sheet, x, y + 12), "next"));
    entries.add(new Legend.Entry(both(RungMark.UNTOUCHED), "untouched"));
    entries.add(new Legend.Entry(both(RungMark.LEARNING), "learning"));
    entries.add(new Legend.Entry(both(RungMark.SOLID), "solid"));
    entries.add(new Legend.Entry(both(RungMark.DUE), "due: left alone for too long"));
    entries.add(new Legend.Entry(both(RungMark.SLIPPING), "slipping: was solid"));
    entries.add(
        new Legend.Entry((sheet, x, y) -> RungMark.underline(sheet, x, y - 11), "moved on from"));
    entries.add(new Legend.Entry(both(RungMark.PASSED_OVER), "passed over: starts behind it"));
    entries.add(new Legend.Entry(WayNode.DONE::draw, "stage done"));
    entries.add(new Legend.Entry(WayNode.NOW::draw, "now here"));
    entries.add(new Legend.Entry(WayNode.OPEN::draw, "stage open"));
    entries.add(new Legend.Entry(WayNode.LOCKED::draw, "stage waits"));
    return entries;
  }

  private static Legend.Sample both(RungMark mark) {
    return (sheet, x, y) -> {
      mark.draw(sheet, SideStyle.POLE, x - 10, y);
      mark.draw(sheet, SideStyle.GAP, x + 10, y);
    };
  }
}
