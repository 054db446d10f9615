"use strict";

SwaggerUIBundle({
  url: "/openapi.yaml",
  dom_id: "#api",
  presets: [SwaggerUIBundle.presets.apis],
  layout: "BaseLayout",
  // The default asks a host on the internet.
  validatorUrl: null,
  deepLinking: true,
  docExpansion: "list",
  // The schemas are shown where they are used; as a list of their own they are only long.
  defaultModelsExpandDepth: -1,
  persistAuthorization: false,
});
