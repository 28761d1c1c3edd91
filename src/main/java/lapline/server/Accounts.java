package lapline.server;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.security.enterprise.credential.UsernamePasswordCredential;
import jakarta.security.enterprise.identitystore.CredentialValidationResult;
import jakarta.security.enterprise.identitystore.IdentityStore;
import java.util.Set;
import java.util.stream.Collectors;
import lapline.people.CheckPassword;

/** Tells the server's security who a sign-in name and password belong to. */
@ApplicationScoped
public class Accounts implements IdentityStore {
  @Inject private CheckPassword checkPassword;

  public CredentialValidationResult validate(UsernamePasswordCredential typed) {
    return checkPassword
        .run(typed.getCaller(), typed.getPassword().getValue())
        .map(
            person -> {
              Set<String> roles =
                  person.roles().stream().map(Enum::name).collect(Collectors.toSet());
              return new CredentialValidationResult(person.id().toString(), roles);
            })
        .orElse(CredentialValidationResult.INVALID_RESULT);
  }
}
