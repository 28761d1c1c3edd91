package lapline.signoff;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What is kept of standings, sign-offs and the steps taken about them. */
public interface SignOffRecords {

  void keep(Standing standing);

  Optional<Standing> standing(UUID person, String skill);

  /** Standings of these people, in one query. */
  List<Standing> standings(Collection<UUID> people);

  /** Standings that time alone has changed by a moment, at most so many, longest ago first. */
  List<Standing> outdated(Instant now, int most);

  /** Whose evidence is complete, longest waiting first. */
  List<Standing> ready(UUID workshop, int first, int size);

  int countReady(UUID workshop);

  void add(SignOff signOff);

  void change(SignOff signOff);

  Optional<SignOff> signOff(UUID id);

  Optional<SignOff> byCode(String code);

  /** Lets nobody else decide about this person and skill until the transaction ends. */
  void hold(UUID person, String skill);

  /** When a sign-off of this skill was last withdrawn. */
  Optional<Instant> withdrawnAt(UUID person, String skill);

  /** The latest sign-off of a person for a skill, whatever its state. */
  Optional<SignOff> latest(UUID person, String skill);

  /** The latest sign-offs of these people, one for each skill, in one query. */
  List<SignOff> latest(Collection<UUID> people);

  void add(Step step);

  /** Every step about a person and a skill, oldest first. */
  List<Step> steps(UUID person, String skill);
}
