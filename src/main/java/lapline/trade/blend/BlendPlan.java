package lapline.trade.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lapline.trade.blend.BlendRoom.EdgeRoom;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;
import lapline.trade.measure.Verdict;

/**
 * A blend before it is sprayed: how far primer, sealer and each colour coat are to go past the one
 * before, and whether the panel has room for all of them.
 *
 * <p>Reaches count from the edge of the repair and add up, their uncertainties as independent (JCGM
 * 100:2008, equation 10). Outlines are taken as exact.
 *
 * @param room the panel and, in the place of the primer, the repair itself
 * @param primer how far the primer goes past the repair, metres, 0 or more
 * @param sealer how far the sealer goes past the primer, metres, 0 or more; 0 for no sealer
 * @param coats how far each colour coat goes past what is under it, metres, 0 or more; at least one
 * @param keepFree how far from an edge the last coat has to end to fade out before it, metres, 0 or
 *     more; a course's or sheet's figure, for no standard gives one
 */
public record BlendPlan(
    BlendRoom room, Estimate primer, Estimate sealer, List<Estimate> coats, double keepFree) {

  public BlendPlan {
    Valid.notNegative("primer", primer.value());
    Valid.notNegative("sealer", sealer.value());
    if (coats.isEmpty()) {
      throw new MeasureException("coats", 0, "1 or more");
    }
    coats.forEach(c -> Valid.notNegative("coat", c.value()));
    coats = List.copyOf(coats);
    Valid.notNegative("keepFree", keepFree);
  }

  /** From the repair's edge to the primer's, metres. */
  public Estimate primerEdge() {
    return primer;
  }

  /**
   * From the repair's edge to the sealer's, metres; that of the primer where there is no sealer.
   */
  public Estimate sealerEdge() {
    return Gum.sum(List.of(primer, sealer));
  }

  /** From the repair's edge to the edge of colour coat 1, 2, …, metres. */
  public List<Estimate> coatEdges() {
    List<Estimate> layers = new ArrayList<>(List.of(primer, sealer));
    List<Estimate> edges = new ArrayList<>();
    for (Estimate coat : coats) {
      layers.add(coat);
      edges.add(Gum.sum(layers));
    }
    return List.copyOf(edges);
  }

  /** From the repair's edge to that of the last colour coat, metres. */
  public Estimate reach() {
    List<Estimate> edges = coatEdges();
    return edges.get(edges.size() - 1);
  }

  /**
   * What each edge of the panel has left beyond the last colour coat.
   *
   * @param edge number and ends of the edge, and the room left to it, metres, negative where the
   *     coat runs over it
   * @param probability that at least {@link #keepFree} is left, 0 to 1
   */
  public record AtEdge(EdgeRoom edge, double probability) {

    /** Met, doubtful or missed. */
    public Verdict verdict() {
      return Verdict.of(probability);
    }
  }

  /** Every edge of the panel, in the order of its corners. */
  public List<AtEdge> edges() {
    TargetRange enough = TargetRange.atLeast(keepFree);
    return room.toEachEdge(reach()).stream()
        .map(e -> new AtEdge(e, Conformance.probability(e.left(), enough)))
        .toList();
  }

  /**
   * Whether the panel has room for the whole blend: as sure as its least sure edge, since all their
   * errors are the one of the reach.
   */
  public Verdict hasRoom() {
    return Verdict.of(edges().stream().mapToDouble(AtEdge::probability).min().orElseThrow());
  }

  /**
   * The edges beyond which the neighbour has to be blended too: those where the colour surely or
   * perhaps does not fade out before them. An edge without a neighbour, as at a wheel opening, asks
   * for nothing.
   *
   * @param edgesWithNeighbour numbers of the edges that meet another panel, from 1
   * @throws MeasureException when the panel has no edge of such a number
   */
  public List<AtEdge> neighboursToBlend(Set<Integer> edgesWithNeighbour) {
    int last = room.panel().corners().size();
    edgesWithNeighbour.forEach(e -> Valid.between("edge", e, 1, last));
    return edges().stream()
        .filter(e -> edgesWithNeighbour.contains(e.edge().edge()))
        .filter(e -> e.verdict() != Verdict.MET)
        .toList();
  }

  /** The same blend without its sealer. */
  public BlendPlan withoutSealer() {
    return new BlendPlan(room, primer, Estimate.of(0, 0), coats, keepFree);
  }

  /**
   * What the sealer costs in room.
   *
   * @param room by which every coat begins and ends farther out, metres
   * @param share of the panel's area that colour covers only because of it, 0 to 1
   * @param with whether the panel has room with the sealer
   * @param without whether it would have room without
   */
  public record SealerCost(Estimate room, double share, Verdict with, Verdict without) {}

  /** What the sealer costs in room; nothing where there is none. */
  public SealerCost sealerCost() {
    BlendPlan bare = withoutSealer();
    double share = room.shareCovered(reach().value()) - room.shareCovered(bare.reach().value());
    return new SealerCost(sealer, share, hasRoom(), bare.hasRoom());
  }

  /** Outlines of the colour coats, each cut off at the panel. */
  public List<Outline> coatOutlines() {
    List<Estimate> edges = coatEdges();
    return IntStream.range(0, edges.size()).mapToObj(i -> room.coat(edges.get(i).value())).toList();
  }
}
