package lapline.people;

/** What a person does in the workshop; one person may have several roles. */
public enum Role {
  /** Learns. */
  APPRENTICE,
  /** Teaches and grades. */
  INSTRUCTOR,
  /** Takes sign-off decisions about people whose evidence somebody else graded. */
  EXAMINER,
  /** Runs the shop. */
  OWNER,
  /** Looks after accounts, targets and content. */
  REGISTRAR
}
