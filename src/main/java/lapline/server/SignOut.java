package lapline.server;

import jakarta.servlet.ServletException;
import jakarta.servlet.annotation.WebServlet;
import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;

/**
 * Ends a session. Stands apart from the pages, so that signing out does not first build the page it
 * was pressed on, which may need what its address said.
 */
@WebServlet("/sign-out")
public class SignOut extends HttpServlet {

  @Override
  protected void doPost(HttpServletRequest request, HttpServletResponse response)
      throws ServletException, IOException {
    request.logout();
    if (request.getSession(false) != null) {
      request.getSession(false).invalidate();
    }
    response.sendRedirect(request.getContextPath() + "/sign-in");
  }
}
