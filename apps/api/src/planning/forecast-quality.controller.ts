import { ForecastQuality } from '@deckround/contracts';
import { Controller, Get, Inject } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers } from '../http/answer.js';
import { ForecastQualityService } from './forecast-quality.service.js';

@ApiTags('Due')
@ApiBearerAuth()
@Controller('v1/forecast-quality')
export class ForecastQualityController {
  constructor(@Inject(ForecastQualityService) private readonly quality: ForecastQualityService) {}

  @Get()
  @Allow(['manager'])
  @Answers(200, ForecastQuality, 'How good our forecasts were, by days ahead, from the shop’s own readings')
  ofShop(@Caller() actor: Actor) {
    return this.quality.ofShop(actor.shopId);
  }
}
