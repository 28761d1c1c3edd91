package lapline.people.store;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.Workshop;
import lapline.trade.measure.UnitSystem;

/** The row of one account. */
@Entity
@Table(name = "person")
class PersonEntity {
  @Id UUID id;

  @ManyToOne(fetch = FetchType.LAZY)
  @JoinColumn(name = "workshop_id")
  WorkshopEntity workshop;

  String name;

  @Column(name = "sign_in_name")
  String signInName;

  @Column(name = "password_hash")
  String passwordHash;

  @Enumerated(EnumType.STRING)
  UnitSystem units;

  boolean active;

  @Column(name = "created_at")
  Instant createdAt;

  @ElementCollection
  @CollectionTable(name = "person_role", joinColumns = @JoinColumn(name = "person_id"))
  @Column(name = "role")
  @Enumerated(EnumType.STRING)
  Set<Role> roles = EnumSet.noneOf(Role.class);

  Person asPerson() {
    Workshop wall = workshop.asWorkshop();
    return new Person(id, wall.id(), name, signInName, roles, units, wall.zone(), active);
  }

  void take(Person person) {
    name = person.name();
    signInName = person.signInName();
    units = person.units();
    active = person.active();
    roles.retainAll(person.roles());
    roles.addAll(person.roles());
  }
}
