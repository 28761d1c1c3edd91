package lapline.content;

import java.util.List;

/**
 * What is wrong in the files that one feature reads; each feature has one bean of it, and the
 * content notices page shows them all.
 */
public interface ContentNotices {
  List<Problem> problems();
}
