package lapline.exams.bank;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lapline.content.ContentFile;
import lapline.content.Json;
import lapline.content.units.PerSystem;
import lapline.content.units.Quantity;

/** One question of a bank, before it is drawn for anybody. */
public sealed interface Item {

  Head head();

  ItemKind kind();

  default String id() {
    return head().id();
  }

  default String topic() {
    return head().topic();
  }

  /** A short hash that changes when the wording, the key or a reason does. */
  default String version() {
    return new ContentFile(id(), Json.write(this)).version();
  }

  /**
   * What every item has.
   *
   * @param id key within its bank, chosen by the author
   * @param topic what it is about; each topic of a bank comes up in each paper
   * @param question as written, with places for values
   * @param source what stands behind the right answer
   */
  record Head(String id, String topic, String question, String source) {}

  /**
   * A choice to tick.
   *
   * @param because why it is right, or what would come of it
   */
  record Choice(String text, boolean right, String because) {}

  /** One or several of the choices are right. */
  record ChoiceItem(Head head, ItemKind kind, List<Choice> choices) implements Item {
    public ChoiceItem {
      choices = List.copyOf(choices);
    }
  }

  /**
   * A step of a job.
   *
   * @param because why it stands where it does
   */
  record Step(String text, String because) {}

  /** Steps, held in their right order. */
  record OrderItem(Head head, List<Step> steps) implements Item {
    public OrderItem {
      steps = List.copyOf(steps);
    }

    @Override
    public ItemKind kind() {
      return ItemKind.ORDER;
    }
  }

  /** A number that people often come to instead, and why. */
  record NumberSlip(PerSystem<Quantity> answer, String because) {}

  /**
   * A number that is the same for everybody.
   *
   * @param worked how the answer comes about, shown afterwards
   */
  record NumberItem(
      Head head,
      PerSystem<Quantity> answer,
      Tolerance within,
      String worked,
      List<NumberSlip> slips)
      implements Item {
    public NumberItem {
      slips = List.copyOf(slips);
    }

    @Override
    public ItemKind kind() {
      return ItemKind.NUMBER;
    }
  }

  /**
   * What people often come to instead: another calculation from the same values, or one of the
   * values itself.
   *
   * @param calculation null where a value is meant
   * @param given name of the value; null where a calculation is meant
   */
  record ComputedSlip(Calculation calculation, String given, String because) {}

  /**
   * A number worked out from drawn values.
   *
   * @param values by name
   * @param shown results in between that {@code worked} names
   */
  record ComputedItem(
      Head head,
      Map<String, PerSystem<ValueRange>> values,
      Calculation calculation,
      Tolerance within,
      String worked,
      Map<String, Calculation> shown,
      List<ComputedSlip> slips)
      implements Item {
    public ComputedItem {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
      shown = Collections.unmodifiableMap(new LinkedHashMap<>(shown));
      slips = List.copyOf(slips);
    }

    @Override
    public ItemKind kind() {
      return ItemKind.COMPUTED;
    }
  }
}
