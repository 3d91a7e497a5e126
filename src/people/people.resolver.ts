import { Args, Field, ID, InputType, Mutation, Query, Resolver } from '@nestjs/graphql';
import { CodedError } from '../platform/graphql/coded-error.js';
import type { Context } from '../platform/context.js';
import { Ctx, Public, RequestCtx, type RequestContext } from '../platform/graphql/request-context.js';
import { PeopleService } from './people.service.js';
import { Company, Person, SignedIn } from './person.model.js';
import { clearSessionCookie, sessionToken, setSessionCookie } from './session-cookie.js';
import { type FreshSession, SessionsService } from './sessions.service.js';

/** Who signs in. */
@InputType({ description: 'Who signs in.' })
export class SignInInput {
  @Field(() => String, { description: 'E-mail address of the person.' })
  readonly email!: string;

  @Field(() => String, { description: 'Password of the person.' })
  readonly password!: string;
}

@Resolver(() => Person)
export class PeopleResolver {
  constructor(
    private readonly people: PeopleService,
    private readonly sessions: SessionsService,
  ) {}

  @Query(() => Person, { nullable: true, description: 'The signed-in person; null when nobody is.' })
  @Public()
  me(@RequestCtx() { ctx }: RequestContext): Promise<Person> | null {
    return ctx && this.people.me(ctx);
  }

  @Query(() => Company, { description: 'The company of the signed-in person.' })
  company(@Ctx() ctx: Context): Promise<Company> {
    return this.people.company(ctx);
  }

  @Query(() => [Person], { name: 'people', description: 'The people of the company, by name.' })
  list(@Ctx() ctx: Context): Promise<Person[]> {
    return this.people.list(ctx);
  }

  @Query(() => [Person], {
    description: 'People of the demo company, who sign in by a button; empty without the demo.',
  })
  @Public()
  demoPeople(): Promise<Person[]> {
    return this.people.demoPeople();
  }

  @Mutation(() => SignedIn, { description: 'Opens a session and sets its cookie.' })
  @Public()
  async signIn(@Args('input') input: SignInInput, @RequestCtx() request: RequestContext): Promise<SignedIn> {
    const session = await this.sessions.signIn(input.email, input.password);
    if (!session)
      throw new CodedError('not-signed-in', 'E-mail or password is wrong. Check both and try again.');
    return this.enter(request, session);
  }

  @Mutation(() => SignedIn, { description: 'Opens a session for a person of the demo company.' })
  @Public()
  async signInToDemo(
    @Args('personId', { type: () => ID, description: 'One of demoPeople.' }) personId: string,
    @RequestCtx() request: RequestContext,
  ): Promise<SignedIn> {
    const person = (await this.people.demoPeople()).find(({ id }) => id === personId);
    if (!person)
      throw new CodedError('not-signed-in', 'There is no such person in the demo. Choose one of the list.');
    return this.enter(request, await this.sessions.open(person.id));
  }

  @Mutation(() => Boolean, { description: 'Ends the session at once and takes its cookie away.' })
  @Public()
  async signOut(@RequestCtx() { request, reply }: RequestContext): Promise<boolean> {
    const token = sessionToken(request?.headers.cookie);
    if (token) await this.sessions.revoke(token);
    if (reply) clearSessionCookie(reply);
    return token !== null;
  }

  private async enter({ reply }: RequestContext, session: FreshSession): Promise<SignedIn> {
    if (reply) setSessionCookie(reply, session.token, session.expiresAt);
    return { person: await this.people.byPersonId(session.personId) };
  }
}
