package lapline.trade.finish;

/**
 * What is to hold on a sanded surface, and so between which grades the sanding should end: coarser
 * and its scratches show through, finer and there is too little for the layer to key to.
 *
 * <p>Usual grades of trade texts, from memory; texts differ by a grade or two, so a product's sheet
 * or a workshop's own range goes before them.
 */
public enum NextLayer {
  SURFACER(Abrasive.P180, Abrasive.P320),
  SOLID_BASE_OR_SEALER(Abrasive.P400, Abrasive.P500),
  /** To P600 dry, to P800 wet. */
  METALLIC_BASE(Abrasive.P500, Abrasive.P800),
  BLENDED_CLEAR(Abrasive.P1000, Abrasive.P1500);

  private final Abrasive coarsest;
  private final Abrasive finest;

  NextLayer(Abrasive coarsest, Abrasive finest) {
    this.coarsest = coarsest;
    this.finest = finest;
  }

  /** The coarsest grade to end with; itself good. */
  public Abrasive coarsest() {
    return coarsest;
  }

  /** The finest grade to end with; itself good. */
  public Abrasive finest() {
    return finest;
  }

  /** Whether a surface that ends with this grade may hold the layer too little. */
  public boolean tooFine(Abrasive last) {
    return last.grade() > finest.grade();
  }

  /** Whether the scratches of this grade may show through the layer. */
  public boolean tooCoarse(Abrasive last) {
    return last.grade() < coarsest.grade();
  }
}
