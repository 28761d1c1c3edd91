package lapline.people.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.persistence.PersistenceContext;
import jakarta.persistence.PersistenceException;
import jakarta.persistence.TypedQuery;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import lapline.people.AccessToken;
import lapline.people.AccountRefusedException;
import lapline.people.NameChange;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.Workshop;

/** Keeps workshops, people and their ways to sign in, in the database. */
@ApplicationScoped
@Transactional
public class StoredPeopleRecords implements PeopleRecords {

  @PersistenceContext private EntityManager rows;

  @Override
  public boolean anyRegistrar() {
    return rows.createQuery(
                "select count(p) from PersonEntity p join p.roles r where r = :role", Long.class)
            .setParameter("role", Role.REGISTRAR)
            .getSingleResult()
        > 0;
  }

  @Override
  public void addWorkshop(Workshop workshop, Instant at) {
    WorkshopEntity row = new WorkshopEntity();
    row.id = workshop.id();
    row.createdAt = at;
    row.take(workshop);
    rows.persist(row);
  }

  @Override
  public Optional<Workshop> workshop(UUID id) {
    return Optional.ofNullable(rows.find(WorkshopEntity.class, id)).map(WorkshopEntity::asWorkshop);
  }

  @Override
  public void changeWorkshop(Workshop workshop) {
    rows.find(WorkshopEntity.class, workshop.id()).take(workshop);
  }

  @Override
  public void hold(UUID workshop) {
    rows.find(WorkshopEntity.class, workshop, LockModeType.PESSIMISTIC_WRITE);
  }

  @Override
  public void add(Person person, Instant at) {
    PersonEntity row = new PersonEntity();
    row.id = person.id();
    row.workshop = rows.getReference(WorkshopEntity.class, person.workshop());
    row.createdAt = at;
    row.take(person);
    rows.persist(row);
    write(person);
  }

  /** A name is looked for before, but not seen while another transaction is about to take it. */
  private void write(Person person) {
    try {
      rows.flush();
    } catch (PersistenceException e) {
      if (String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("person_sign_in_name")) {
        throw AccountRefusedException.taken(person.signInName());
      }
      throw e;
    }
  }

  @Override
  public void change(Person person) {
    rows.find(PersonEntity.class, person.id()).take(person);
    write(person);
  }

  @Override
  public void add(NameChange change) {
    rows.persist(NameChangeEntity.of(change));
  }

  @Override
  public List<NameChange> nameChanges(UUID person) {
    return rows.createQuery(
            "select c from NameChangeEntity c where c.person = :person"
                + " order by c.changedAt desc, c.id",
            NameChangeEntity.class)
        .setParameter("person", person)
        .setMaxResults(200)
        .getResultStream()
        .map(NameChangeEntity::asChange)
        .toList();
  }

  @Override
  public Optional<Person> person(UUID id) {
    return Optional.ofNullable(rows.find(PersonEntity.class, id)).map(PersonEntity::asPerson);
  }

  @Override
  public Optional<Person> bySignInName(String signInName) {
    return rows.createQuery(
            "select p from PersonEntity p join fetch p.workshop where p.signInName = :name",
            PersonEntity.class)
        .setParameter("name", signInName)
        .getResultStream()
        .findFirst()
        .map(PersonEntity::asPerson);
  }

  @Override
  public Map<UUID, String> names(Collection<UUID> ids) {
    if (ids.isEmpty()) {
      return Map.of();
    }
    return rows.createQuery(
            "select p.id, p.name from PersonEntity p where p.id in :ids", Object[].class)
        .setParameter("ids", ids)
        .getResultStream()
        .collect(Collectors.toMap(r -> (UUID) r[0], r -> (String) r[1]));
  }

  @Override
  public List<Person> page(UUID workshop, String part, Role role, int first, int size) {
    return filtered(
            "select p from PersonEntity p join fetch p.workshop w",
            " order by p.name, p.id",
            PersonEntity.class,
            workshop,
            part,
            role)
        .setFirstResult(first)
        .setMaxResults(size)
        .getResultStream()
        .map(PersonEntity::asPerson)
        .toList();
  }

  @Override
  public int count(UUID workshop, String part, Role role) {
    return filtered("select count(p) from PersonEntity p", "", Long.class, workshop, part, role)
        .getSingleResult()
        .intValue();
  }

  private <T> TypedQuery<T> filtered(
      String select, String order, Class<T> type, UUID workshop, String part, Role role) {
    String where =
        " where p.workshop.id = :workshop and lower(p.name) like :part escape '!'"
            + (role == null ? "" : " and :role member of p.roles");
    TypedQuery<T> query =
        rows.createQuery(select + where + order, type)
            .setParameter("workshop", workshop)
            .setParameter("part", "%" + plain(part.toLowerCase(Locale.ROOT)) + "%");
    return role == null ? query : query.setParameter("role", role);
  }

  /** What a pattern gives a meaning to, as the mere sign that somebody typed. */
  private static String plain(String part) {
    return part.replaceAll("[!%_]", "!$0");
  }

  @Override
  public Optional<String> passwordHash(UUID person) {
    return Optional.ofNullable(rows.find(PersonEntity.class, person)).map(p -> p.passwordHash);
  }

  @Override
  public void setPasswordHash(UUID person, String hash) {
    rows.find(PersonEntity.class, person).passwordHash = hash;
  }

  @Override
  public void addPasswordLink(String digest, UUID person, Instant expires) {
    PasswordLinkEntity row = new PasswordLinkEntity();
    row.digest = digest;
    row.person = person;
    row.expiresAt = expires;
    rows.persist(row);
  }

  @Override
  public Optional<UUID> passwordLinkOwner(String digest, Instant at) {
    return Optional.ofNullable(rows.find(PasswordLinkEntity.class, digest))
        .filter(link -> link.usedAt == null && link.expiresAt.isAfter(at))
        .map(link -> link.person);
  }

  @Override
  public void endPasswordLinks(UUID person, Instant at) {
    rows.createQuery(
            "update PasswordLinkEntity l set l.usedAt = :at"
                + " where l.person = :person and l.usedAt is null")
        .setParameter("person", person)
        .setParameter("at", at)
        .executeUpdate();
  }

  @Override
  public void usePasswordLink(String digest, Instant at) {
    rows.find(PasswordLinkEntity.class, digest).usedAt = at;
  }

  @Override
  public void addToken(AccessToken token, String digest) {
    AccessTokenEntity row = new AccessTokenEntity();
    row.id = token.id();
    row.person = token.person();
    row.name = token.name();
    row.digest = digest;
    row.createdAt = token.created();
    rows.persist(row);
  }

  @Override
  public List<AccessToken> tokens(UUID person) {
    return rows.createQuery(
            "select t from AccessTokenEntity t where t.person = :person order by t.createdAt desc",
            AccessTokenEntity.class)
        .setParameter("person", person)
        .setMaxResults(100)
        .getResultStream()
        .map(AccessTokenEntity::asToken)
        .toList();
  }

  @Override
  public Optional<AccessToken> tokenByDigest(String digest) {
    return rows.createQuery(
            "select t from AccessTokenEntity t where t.digest = :digest", AccessTokenEntity.class)
        .setParameter("digest", digest)
        .getResultStream()
        .findFirst()
        .map(AccessTokenEntity::asToken);
  }

  @Override
  public void touchToken(UUID token, Instant at) {
    rows.find(AccessTokenEntity.class, token).lastUsedAt = at;
  }

  @Override
  public void revokeToken(UUID token, Instant at) {
    rows.find(AccessTokenEntity.class, token).revokedAt = at;
  }
}
