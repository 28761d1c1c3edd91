package lapline.people;

import java.util.UUID;

/**
 * Told when a learner did, or somebody judged, something that may bring them nearer to a skill: a
 * lesson finished, an exam handed in, a panel scored or graded. Who keeps standings listens; who
 * tells does not know them.
 */
public record LearnerAdvanced(UUID person, UUID workshop, String unit) {}
