package dev.poleward.domain.judgement;

import java.util.List;

/** The log of what is likely of a dog's returns, over the two numbers of a {@link Retention}. */
record RetentionHill(List<Return> returns, RetentionPrior prior) implements Hill {

  /** A share of 1 to a hundred digits, either way. */
  private static final double FARTHEST = 250;

  Place top() {
    return Climb.from(this, prior.logitAtOnce(), prior.fall(), FARTHEST);
  }

  @Override
  public Place at(double x, double y) {
    double ofAtOnce = 1 / (prior.deviationAtOnce() * prior.deviationAtOnce());
    double ofFall = 1 / (prior.deviationOfFall() * prior.deviationOfFall());
    double overAtOnce = x - prior.logitAtOnce();
    double overFall = y - prior.fall();
    double height = -(ofAtOnce * overAtOnce * overAtOnce + ofFall * overFall * overFall) / 2;
    double byX = -ofAtOnce * overAtOnce;
    double byY = -ofFall * overFall;
    double byXX = -ofAtOnce;
    double byXY = 0;
    double byYY = -ofFall;
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
