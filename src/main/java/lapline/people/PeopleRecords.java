package lapline.people;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** What is kept about workshops, people and the ways they sign in. */
public interface PeopleRecords {

  boolean anyRegistrar();

  void addWorkshop(Workshop workshop, Instant at);

  Optional<Workshop> workshop(UUID id);

  void changeWorkshop(Workshop workshop);

  /**
   * Lets nobody else who asks for it change what the workshop as a whole has agreed on until the
   * transaction ends: the second of two windows sees what the first one did.
   */
  void hold(UUID workshop);

  /**
   * @throws AccountRefusedException when somebody of another workshop took the sign-in name at this
   *     very moment
   */
  void add(Person person, Instant at);

  /**
   * Writes name, sign-in name, roles, units and whether the account is active.
   *
   * @throws AccountRefusedException as above
   */
  void change(Person person);

  void add(NameChange change);

  /** How a person's names were corrected, newest first. */
  List<NameChange> nameChanges(UUID person);

  Optional<Person> person(UUID id);

  Optional<Person> bySignInName(String signInName);

  /** Names of the given people, in one query. */
  Map<UUID, String> names(Collection<UUID> ids);

  /**
   * One page of a workshop's people by name; {@code part} of the name as it stands, or empty for
   * all.
   */
  List<Person> page(UUID workshop, String part, Role role, int first, int size);

  int count(UUID workshop, String part, Role role);

  Optional<String> passwordHash(UUID person);

  void setPasswordHash(UUID person, String hash);

  void addPasswordLink(String digest, UUID person, Instant expires);

  /** The person a link is good for at this time; empty when unknown, used or expired. */
  Optional<UUID> passwordLinkOwner(String digest, Instant at);

  /** Ends every link of a person that was not used yet. */
  void endPasswordLinks(UUID person, Instant at);

  void usePasswordLink(String digest, Instant at);

  void addToken(AccessToken token, String digest);

  List<AccessToken> tokens(UUID person);

  Optional<AccessToken> tokenByDigest(String digest);

  void touchToken(UUID token, Instant at);

  void revokeToken(UUID token, Instant at);
}
