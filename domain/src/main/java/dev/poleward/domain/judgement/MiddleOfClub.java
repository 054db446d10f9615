package dev.poleward.domain.judgement;

/**
 * Where the middle of a club lies, from dogs one after the other, as distances from what is usual.
 * With D the variance between the dogs of a club and J<sub>i</sub> the precision of what dog i says
 * of itself, it says of the middle with precision (D + J<sub>i</sub>⁻¹)⁻¹ = D⁻¹ − D⁻¹(D⁻¹ +
 * J<sub>i</sub>)⁻¹D⁻¹: no more than D⁻¹ however much it has run, and nothing where it has not. For
 * one thread.
 */
final class MiddleOfClub {

  private final Retention usual;

  /** Variance between the dogs of one club. */
  private final double ofAtOnce;

  private final double ofFall;

  // Precision of the middle, and the same times its place.
  private double byXX;
  private double byXY;
  private double byYY;
  private double byX;
  private double byY;

  /**
   * Before the first dog.
   *
   * @param usual without covariance
   * @param betweenClubs the part of its variances that lies between clubs, above 0 and below 1
   */
  MiddleOfClub(Retention usual, double betweenClubs) {
    this.usual = usual;
    this.ofAtOnce = (1 - betweenClubs) * usual.varianceAtOnce();
    this.ofFall = (1 - betweenClubs) * usual.varianceOfFall();
    this.byXX = 1 / (betweenClubs * usual.varianceAtOnce());
    this.byYY = 1 / (betweenClubs * usual.varianceOfFall());
  }

  /** Hears a dog, as it was fitted with what is usual. */
  void hear(Retention own) {
    double det = own.varianceAtOnce() * own.varianceOfFall() - own.covariance() * own.covariance();
    double ownXX = own.varianceOfFall() / det;
    double ownXY = -own.covariance() / det;
    double ownYY = own.varianceAtOnce() / det;
    double x = own.logitAtOnce() - usual.logitAtOnce();
    double y = own.fall() - usual.fall();

    // Its precision, with that of what is usual taken out and that of a dog of the club put in.
    double bothXX = ownXX - 1 / usual.varianceAtOnce() + 1 / ofAtOnce;
    double bothYY = ownYY - 1 / usual.varianceOfFall() + 1 / ofFall;
    double bothDet = bothXX * bothYY - ownXY * ownXY;
    // (D⁻¹ + J)⁻¹
    double leftXX = bothYY / bothDet;
    double leftXY = -ownXY / bothDet;
    double leftYY = bothXX / bothDet;

    byXX += (1 - leftXX / ofAtOnce) / ofAtOnce;
    byXY -= leftXY / ofAtOnce / ofFall;
    byYY += (1 - leftYY / ofFall) / ofFall;
    double saidX = ownXX * x + ownXY * y;
    double saidY = ownXY * x + ownYY * y;
    byX += (leftXX * saidX + leftXY * saidY) / ofAtOnce;
    byY += (leftXY * saidX + leftYY * saidY) / ofFall;
  }

  /** What is expected of one more dog: where the middle lies is not known to the point either. */
  Retention ofOneMore() {
    double det = byXX * byYY - byXY * byXY;
    return new Retention(
        usual.logitAtOnce() + (byYY * byX - byXY * byY) / det,
        usual.fall() + (byXX * byY - byXY * byX) / det,
        ofAtOnce + byYY / det,
        -byXY / det,
        ofFall + byXX / det);
  }
}
