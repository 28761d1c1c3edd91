package lapline.server;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.security.enterprise.authentication.mechanism.http.CustomFormAuthenticationMechanismDefinition;
import jakarta.security.enterprise.authentication.mechanism.http.LoginToContinue;

/** Sign-in by our own page; a page that needs an account leads there and back. */
@CustomFormAuthenticationMechanismDefinition(
    loginToContinue =
        @LoginToContinue(
            loginPage = "/sign-in.xhtml?back=true",
            errorPage = "",
            useForwardToLogin = false))
@ApplicationScoped
public class Security {}
