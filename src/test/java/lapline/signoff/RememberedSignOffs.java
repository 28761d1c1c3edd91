package lapline.signoff;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** Standings, sign-offs and steps kept in memory, for tests of the rules. */
final class RememberedSignOffs implements SignOffRecords {
  private record About(UUID person, String skill) {}

  private final Map<About, Standing> standings = new LinkedHashMap<>();
  private final Map<UUID, SignOff> signOffs = new LinkedHashMap<>();
  private final List<Step> steps = new ArrayList<>();

  @Override
  public void keep(Standing standing) {
    standings.put(new About(standing.person(), standing.skill()), standing);
  }

  @Override
  public Optional<Standing> standing(UUID person, String skill) {
    return Optional.ofNullable(standings.get(new About(person, skill)));
  }

  @Override
  public List<Standing> standings(Collection<UUID> people) {
    return standings.values().stream().filter(s -> people.contains(s.person())).toList();
  }

  @Override
  public List<Standing> outdated(Instant now, int most) {
    return standings.values().stream()
        .filter(s -> s.holdsUntil() != null && !s.holdsUntil().isAfter(now))
        .limit(most)
        .toList();
  }

  @Override
  public List<Standing> ready(UUID workshop, int first, int size) {
    return allReady(workshop)
        .sorted(Comparator.comparing(Standing::readySince))
        .skip(first)
        .limit(size)
        .toList();
  }

  @Override
  public int countReady(UUID workshop) {
    return (int) allReady(workshop).count();
  }

  private Stream<Standing> allReady(UUID workshop) {
    return standings.values().stream().filter(s -> s.workshop().equals(workshop) && s.isReady());
  }

  @Override
  public void add(SignOff signOff) {
    signOffs.put(signOff.id(), signOff);
  }

  @Override
  public void change(SignOff signOff) {
    signOffs.put(signOff.id(), signOff);
  }

  @Override
  public Optional<SignOff> signOff(UUID id) {
    return Optional.ofNullable(signOffs.get(id));
  }

  @Override
  public Optional<SignOff> byCode(String code) {
    return signOffs.values().stream().filter(s -> s.code().equals(code)).findFirst();
  }

  /** One thread at a time decides in a test. */
  @Override
  public void hold(UUID person, String skill) {}

  @Override
  public Optional<Instant> withdrawnAt(UUID person, String skill) {
    return steps(person, skill).stream()
        .filter(s -> s.kind() == Step.Kind.WITHDRAWN)
        .map(Step::at)
        .max(Comparator.naturalOrder());
  }

  @Override
  public Optional<SignOff> latest(UUID person, String skill) {
    return latest(List.of(person)).stream().filter(s -> s.skill().equals(skill)).findFirst();
  }

  @Override
  public List<SignOff> latest(Collection<UUID> people) {
    Map<About, SignOff> latest = new LinkedHashMap<>();
    signOffs.values().stream()
        .filter(s -> people.contains(s.person()))
        .sorted(Comparator.comparing(SignOff::granted))
        .forEach(s -> latest.put(new About(s.person(), s.skill()), s));
    return List.copyOf(latest.values());
  }

  @Override
  public void add(Step step) {
    steps.add(step);
  }

  @Override
  public List<Step> steps(UUID person, String skill) {
    return steps.stream()
        .filter(s -> s.person().equals(person) && s.skill().equals(skill))
        .toList();
  }
}
