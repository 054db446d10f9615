package dev.poleward.domain.judgement;

import java.util.List;

/**
 * The log of what is likely of a dog's returns, over the two numbers of a {@link Retention}.
 *
 * @param expected of the dog before its returns
 */
record RetentionHill(List<Return> returns, Retention expected) implements Hill {

  /** A share of 1 to a hundred digits, either way. */
  private static final double FARTHEST = 250;

  Place top() {
    return Climb.from(this, expected.logitAtOnce(), expected.fall(), FARTHEST);
  }

  @Override
  public Place at(double x, double y) {
    double det =
        expected.varianceAtOnce() * expected.varianceOfFall()
            - expected.covariance() * expected.covariance();
    double byXX = -expected.varianceOfFall() / det;
    double byXY = expected.covariance() / det;
    double byYY = -expected.varianceAtOnce() / det;
    double overAtOnce = x - expected.logitAtOnce();
    double overFall = y - expected.fall();
    double byX = byXX * overAtOnce + byXY * overFall;
    double byY = byXY * overAtOnce + byYY * overFall;
    double height = (byX * overAtOnce + byY * overFall) / 2;
    for (Return each : returns) {
      double time = StrictMath.log1p(each.daysAway());
      double logit = x - y * time;
      double chance = Retention.chance(logit);
      double over = each.weight() * ((each.clean() ? 1 : 0) - chance);
      double bend = each.weight() * chance * Retention.chance(-logit);
      height -= each.weight() * StrictMath.log1p(StrictMath.exp(-Math.abs(logit)));
      height -= each.weight() * Math.max(0, each.clean() ? -logit : logit);
      byX += over;
      byY -= over * time;
      byXX -= bend;
      byXY += bend * time;
      byYY -= bend * time * time;
    }
    return new Place(x, y, height, byX, byY, byXX, byXY, byYY);
  }
}
