package lapline.exams.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import lapline.exams.ItemStudied;
import lapline.exams.bank.BankText;
import lapline.exams.bank.Item;
import lapline.judgement.items.ItemSums;
import lapline.pages.Messages;
import lapline.people.SignedIn;

/** An item of a bank and what the papers say about it, in words. */
@Named("itemWords")
@ApplicationScoped
public class ItemWords {
  @Inject private SignedIn signedIn;
  @Inject private Messages messages;

  /** The question as it stands in the bank; drawn values are left open. */
  public String question(Item item) {
    return filled(item, item.head().question());
  }

  public String choice(Item item, Item.Choice choice) {
    return filled(item, choice.text());
  }

  public String because(Item item, Item.Choice choice) {
    return filled(item, choice.because());
  }

  /** The steps in their right order; none for other kinds. */
  public List<Item.Step> steps(Item item) {
    return item instanceof Item.OrderItem order ? order.steps() : List.of();
  }

  /** How a number comes about; empty for other kinds. */
  public String worked(Item item) {
    if (item instanceof Item.NumberItem number) {
      return filled(item, number.worked());
    }
    return item instanceof Item.ComputedItem computed ? filled(item, computed.worked()) : "";
  }

  public String worth(ItemStudied studied) {
    return studied.aside()
        ? messages.get("exams.study.aside")
        : messages.say("exams.study.worth." + studied.worth(), ItemStudied.ENOUGH);
  }

  /** 63 %, or a dash. */
  public String share(OptionalDouble share) {
    return share.isEmpty() ? "–" : Math.round(100 * share.getAsDouble()) + "\u00a0%";
  }

  /** 0.42, or a dash. */
  public String figure(OptionalDouble value) {
    return value.isEmpty() ? "–" : String.format(Locale.ROOT, "%.2f", value.getAsDouble());
  }

  /**
   * 0.42 (0.05 to 0.70), from enough papers on; of fewer a dash, since chance alone would say as
   * much.
   */
  public String apart(ItemSums sums) {
    if (sums.papers() < ItemStudied.ENOUGH) {
      return "–";
    }
    String middle = figure(sums.itemRest());
    return sums.itemRestLimits()
        .map(l -> messages.say("exams.study.apart.figure", middle, l.least(), l.most()))
        .orElse(middle);
  }

  /** What the papers say, in a line. */
  public String figures(ItemSums sums) {
    if (sums.papers() == 0) {
      return messages.get("exams.item.figures.none");
    }
    return sums.papers() < ItemStudied.ENOUGH
        ? messages.say(
            "exams.item.figures.few", sums.papers(), share(sums.difficulty()), ItemStudied.ENOUGH)
        : messages.say("exams.item.figures", sums.papers(), share(sums.difficulty()), apart(sums));
  }

  private String filled(Item item, String text) {
    Map<String, String> open = new TreeMap<>();
    BankText.names(text).forEach(name -> open.put(name, "[" + name + "]"));
    return BankText.fill(text, signedIn.person().units(), open);
  }
}
