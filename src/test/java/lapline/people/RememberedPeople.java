package lapline.people;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** People and their ways to sign in kept in memory, for tests of the rules. */
public final class RememberedPeople implements PeopleRecords {
  private record Link(UUID person, Instant expires) {}

  private final Map<UUID, Workshop> workshops = new LinkedHashMap<>();
  private final Map<UUID, Person> people = new LinkedHashMap<>();
  private final Map<UUID, String> hashes = new LinkedHashMap<>();
  private final List<NameChange> nameChanges = new ArrayList<>();
  private final Map<String, Link> links = new LinkedHashMap<>();
  private final Map<String, AccessToken> tokens = new LinkedHashMap<>();

  @Override
  public boolean anyRegistrar() {
    return people.values().stream().anyMatch(p -> p.is(Role.REGISTRAR));
  }

  @Override
  public void addWorkshop(Workshop workshop, Instant at) {
    workshops.put(workshop.id(), workshop);
  }

  @Override
  public Optional<Workshop> workshop(UUID id) {
    return Optional.ofNullable(workshops.get(id));
  }

  @Override
  public void changeWorkshop(Workshop workshop) {
    workshops.put(workshop.id(), workshop);
  }

  @Override
  public void hold(UUID workshop) {
    // one thread: nobody else is there
  }

  @Override
  public void add(Person person, Instant at) {
    people.put(person.id(), person);
  }

  @Override
  public void change(Person person) {
    people.put(person.id(), person);
  }

  @Override
  public void add(NameChange change) {
    nameChanges.add(0, change);
  }

  @Override
  public List<NameChange> nameChanges(UUID person) {
    return nameChanges.stream().filter(c -> c.person().equals(person)).toList();
  }

  @Override
  public Optional<Person> person(UUID id) {
    return Optional.ofNullable(people.get(id));
  }

  @Override
  public Optional<Person> bySignInName(String signInName) {
    return people.values().stream().filter(p -> p.signInName().equals(signInName)).findFirst();
  }

  @Override
  public Map<UUID, String> names(Collection<UUID> ids) {
    return people.values().stream()
        .filter(p -> ids.contains(p.id()))
        .collect(Collectors.toMap(Person::id, Person::name));
  }

  @Override
  public List<Person> page(UUID workshop, String part, Role role, int first, int size) {
    return matching(workshop, part, role)
        .sorted(Comparator.comparing(Person::name))
        .skip(first)
        .limit(size)
        .toList();
  }

  @Override
  public int count(UUID workshop, String part, Role role) {
    return (int) matching(workshop, part, role).count();
  }

  private Stream<Person> matching(UUID workshop, String part, Role role) {
    return people.values().stream()
        .filter(p -> p.workshop().equals(workshop))
        .filter(p -> p.name().toLowerCase().contains(part.toLowerCase()))
        .filter(p -> role == null || p.is(role));
  }

  @Override
  public Optional<String> passwordHash(UUID person) {
    return Optional.ofNullable(hashes.get(person));
  }

  @Override
  public void setPasswordHash(UUID person, String hash) {
    hashes.put(person, hash);
  }

  @Override
  public void addPasswordLink(String digest, UUID person, Instant expires) {
    links.put(digest, new Link(person, expires));
  }

  @Override
  public Optional<UUID> passwordLinkOwner(String digest, Instant at) {
    return Optional.ofNullable(links.get(digest))
        .filter(link -> at.isBefore(link.expires()))
        .map(Link::person);
  }

  @Override
  public void endPasswordLinks(UUID person, Instant at) {
    links.values().removeIf(link -> link.person().equals(person));
  }

  @Override
  public void usePasswordLink(String digest, Instant at) {
    links.remove(digest);
  }

  @Override
  public void addToken(AccessToken token, String digest) {
    tokens.put(digest, token);
  }

  @Override
  public List<AccessToken> tokens(UUID person) {
    return tokens.values().stream().filter(t -> t.person().equals(person)).toList();
  }

  @Override
  public Optional<AccessToken> tokenByDigest(String digest) {
    return Optional.ofNullable(tokens.get(digest)).filter(AccessToken::good);
  }

  @Override
  public void touchToken(UUID token, Instant at) {
    replace(token, t -> at, AccessToken::revoked);
  }

  @Override
  public void revokeToken(UUID token, Instant at) {
    replace(token, AccessToken::lastUsed, t -> at);
  }

  private void replace(
      UUID token,
      java.util.function.Function<AccessToken, Instant> used,
      java.util.function.Function<AccessToken, Instant> revoked) {
    tokens.replaceAll(
        (digest, t) ->
            t.id().equals(token)
                ? new AccessToken(
                    t.id(), t.person(), t.name(), t.created(), used.apply(t), revoked.apply(t))
                : t);
  }
}
