package dev.poleward.service.journal;

class MemoryPersonKeyTopicTest implements PersonKeyTopicConformance {

  private final MemoryPersonKeyTopic topic = new MemoryPersonKeyTopic();

  @Override
  public PersonKeyTopic topic() {
    return topic;
  }

  @Override
  public PersonKeyTopic sameTopicElsewhere() {
    return topic.elsewhere();
  }
}
