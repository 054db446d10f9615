package dev.poleward.service;

/** What the program can do, in words. */
final class Help {

  static final String TEXT =
      """
      usage: poleward <command> [options]

        serve       keep records: run the service until it is stopped
        demo        the same with an invented club, and what to look at
        make-keys   make host.key and master.key, to be copied to all nodes of a cluster
        rehearse    the demo on a folder of its own, shown to nobody; part of the build
        help        print this text

      Options:

        --data DIR             folder with all data; default ./data
        --port N               port to listen on; default 8080, 0 for any free one
        --listen ADDRESS       address to listen on; default 127.0.0.1
        --tls FILE             PKCS #12 file with the certificate to listen with, or the word
                               "elsewhere" when a proxy in front does it; needed with any address
                               but loopback
        --tls-password-file F  file with the password of the PKCS #12 file
        --kafka HOST:PORT,…    use this Kafka cluster instead of the broker inside
        --kafka-port N         port of the broker inside, on loopback; default any free one
        --host-key-file F      the host key; default DIR/host.key, made at the first start
        --master-key-file F    the key over people's keys; default DIR/master.key
        --min-free-mib N       room on the disk below which writes are refused; default 512

      Exit codes: 0 stopped in order, 1 cannot start, 2 wrong command line.
      """;

  private Help() {}
}
