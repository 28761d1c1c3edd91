package lapline.board;

import java.util.List;

/** A person with a mark for each skill. */
public record BoardRow(Named person, List<SkillMark> marks) {
  public BoardRow {
    marks = List.copyOf(marks);
  }
}
